import { type ResponseInfo, supportOf } from "../../day/observations/index.ts";
import { harmOf, harmResponses, type StudyResults } from "../../days/results/index.ts";
import {
  chanceAboveZero,
  chancesToBeBest,
  type Estimate,
  jointEffects,
  mainEffects,
  quantile,
  shareInterval,
  studentQuantile,
  varianceComponents,
  within,
  withoutLuck,
  worthOfKnowing,
} from "../../maths/statistics/index.ts";
import type { Between, Doubt, DoubtDecision, DoubtEstimate, DoubtFigure, DoubtQuestion } from "./doubt.ts";
import { narrowerBy, type OptionCurve, readingAdvice, worthOfCurves } from "./readingAdvice.ts";

/** A variant that is better in fewer worlds than this part of all can be dropped. */
const DROPPED = 0.01;

/** Values of one response by variant, world and day; null where a day has none. */
type Values = readonly (readonly (readonly (number | null)[])[])[];

/** Puts together what the study of worlds found. A pure function of the question and its results. */
export function analyse(question: DoubtQuestion, results: Pick<StudyResults, "responses" | "variants">): Doubt {
  const { name, counts, figures, variants, study, calendar } = question;
  const responses = question.responses.map((key) => results.responses.find((info) => info.key === key)!);
  const valuesOf = (key: string): Values =>
    variants.map((_, variant) =>
      Array.from(
        { length: counts.worlds },
        (_, world) => results.variants[world * variants.length + variant]!.values[key] ?? [],
      ),
    );
  const asked = { figures, confidence: study.confidence };
  const first = responses[0]!;
  const harms = harmsOf(question, valuesOf);
  const values = valuesOf(first.key);
  const choice = choiceOf({ values, harms, better: question.better ?? first.better, ...asked });
  const told = choice?.decision.best ?? 0;
  const estimates = responses.map((info) => valuesOf(info.key).map((each) => estimateOf(each, info, asked)));
  return {
    precision: null,
    ...{ name, counts, figures, variants, responses, calendar, harms, confidence: study.confidence, told },
    estimates,
    decision: choice?.decision ?? null,
    ...measured(values[told]!, estimates[0]![told] ?? null, asked, choice),
    unfinished: valuesOf("unfinished")
      .flat(2)
      .filter((value) => value === 1).length,
    means: values.map((worlds) => worlds.map((days) => meanOf(present(days)))),
  };
}

/** What figures do together, and what more readings of them would bring. */
function measured(
  worlds: Values[number],
  estimate: DoubtEstimate | null,
  { figures, confidence }: Asked,
  choice: Choice | null,
): Pick<Doubt, "joint" | "readings"> {
  const found = estimate === null ? null : grouped(worlds, confidence);
  if (found === null) return { joint: null, readings: figures.map(() => null) };
  const { means: response, noise } = found;
  const columns = figures.map(({ factors }) => factors);
  const joint = jointEffects({ response, noise, figures: columns, grid: false, confidence });
  const effects = mainEffects(response, columns, noise, confidence);
  return {
    joint: joint && {
      explained: joint.explained,
      figures: joint.figures.map(({ alone, total }) => ({ alone, total })),
      pairs: joint.pairs.map(({ figures: both, share }) => ({ figures: both, share })),
    },
    readings: figures.map((figure, index) =>
      readingAdvice(figure, {
        estimate: estimate!,
        effect: estimate!.figures[index]!,
        curve: effects.figures[index]!,
        choice: choice && { worth: choice.decision.figures[index]!, curves: choice.curves[index]! },
      }),
    ),
  };
}

/** Over the days of all worlds, each beside the same day of today's plan. */
function harmsOf({ plan, variants }: DoubtQuestion, valuesOf: (key: string) => Values): (string | null)[] {
  const keys = [...harmResponses(plan), "unfinished"];
  const days = keys.map((key) => [key, valuesOf(key)] as const);
  const ofVariant = (variant: number) =>
    Object.fromEntries(days.map(([key, values]) => [key, values[variant]!.flat()]));
  return variants.map((_, variant) => (variant === 0 ? null : harmOf(plan, ofVariant(0), ofVariant(variant))));
}

interface Asked {
  figures: readonly DoubtFigure[];
  confidence: number;
}

/** Days grouped by world, with what is to be known of such a group's mean. */
interface Grouped {
  groups: number[][];
  means: number[];
  /** Variance that the luck of its days gives a world's mean, on average over the worlds. */
  noise: number;
  components: ReturnType<typeof varianceComponents>;
}

/** Null where a world has no value, or no world has two. */
function grouped(worlds: readonly (readonly (number | null)[])[], confidence: number): Grouped | null {
  const groups = worlds.map(present);
  if (groups.some(({ length }) => length === 0) || groups.every(({ length }) => length === 1)) return null;
  const components = varianceComponents(groups, confidence);
  const noise = components.within * meanOf(groups.map(({ length }) => 1 / length))!;
  return { groups, means: groups.map((days) => meanOf(days)!), noise, components };
}

function estimateOf(
  worlds: readonly (readonly (number | null)[])[],
  info: ResponseInfo,
  { figures, confidence }: Asked,
): DoubtEstimate | null {
  const found = grouped(worlds, confidence);
  if (found === null) return null;
  const { between, within: luck, mean, share } = found.components;
  const days = daysOf(found.groups, confidence);
  const luckAlone = between + luck === 0 ? 0 : Math.sqrt(luck / (between + luck));
  const middle = Math.min(Math.max(mean, days.low), days.high);
  const columns = figures.map(({ factors }) => factors);
  const effects = mainEffects(found.means, columns, found.noise, confidence);
  return {
    mean,
    ...meanDay(found, info, confidence),
    ...{ days, luckSd: Math.sqrt(luck), notKnownSd: Math.sqrt(between) },
    luck: { low: middle - luckAlone * (middle - days.low), high: middle + luckAlone * (days.high - middle) },
    notKnown: share,
    spanNotKnown: share === null || days.low === days.high ? null : ofSpan(share),
    figures: effects.figures.map(({ variance, share }) => ({
      share,
      narrower: narrowerBy(days, between, luck, variance),
    })),
  };
}

/** A span goes with the root of its variance. */
function ofSpan({ value, low, high }: Between & { value: number }) {
  const [middle, from, to] = [value, low, high].map((part) => 1 - Math.sqrt(1 - part)) as [number, number, number];
  return { value: middle, low: from, high: to };
}

/** In so many of all simulated days as the confidence says. */
function daysOf(groups: readonly number[][], confidence: number): Between {
  const all = groups.flat().sort((a, b) => a - b);
  return { low: quantile(all, (1 - confidence) / 2)!, high: quantile(all, (1 + confidence) / 2)! };
}

/**
 * The mean day: with the luck of as many days alone, and with what is not known, t of worlds less one times the root of both
 * variances (Song and Nelson 2015, from memory, for the two parts).
 */
function meanDay({ components }: Grouped, info: ResponseInfo, confidence: number) {
  const { mean, between, within: luck, values, groups } = components;
  const ends = (variance: number, df: number): Between => {
    const halfWidth = studentQuantile((1 + confidence) / 2, df) * Math.sqrt(variance);
    const plain: Estimate = {
      ...{ n: values, mean, halfWidth, low: mean - halfWidth, high: mean + halfWidth },
      ...{ sd: Math.sqrt(between + luck), min: mean, max: mean },
    };
    const { low, high } = within(supportOf(info), plain, confidence);
    return { low: low!, high: high! };
  };
  return { plain: ends(luck / values, values - 1), full: ends(between + luck / values, groups - 1) };
}

interface Asking extends Asked {
  values: Values;
  harms: readonly (string | null)[];
  better: "more" | "less" | null;
}

interface Choice {
  decision: DoubtDecision;
  /** By figure and option: mean of its benefit, and what the figure adds to it in each world. */
  curves: OptionCurve[][];
}

/** More options than this are not compared pair by pair. */
const MAX_PAIRED = 20;

/** By how much each variant beats today's plan in each world; the benefit of today's plan is 0. */
function choiceOf({ values, harms, better, figures, confidence }: Asking): Choice | null {
  const options = values.flatMap((_, variant) => (harms[variant] === null ? [variant] : []));
  if (options.length < 2 || better === null) return null;
  const sign = better === "more" ? 1 : -1;
  const against = (variant: number, other: number) =>
    grouped(paired(values[variant]!, values[other]!, sign), confidence);
  const gains = options.map((variant) => (variant === 0 ? null : against(variant, 0)));
  if (gains.slice(1).includes(null)) return null;
  const worlds = values[0]!.length;
  const benefits = gains.map((gain) => (gain === null ? zeros(worlds) : withoutLuck(gain.means, gain.noise)));
  const { best, means, regrets, value } = worthOfKnowing(benefits);
  const rivals = options.map((variant, option) => (option === best ? null : against(variant, options[best]!)));
  const chances = chancesToBeBest(rivals);
  const columns = figures.map(({ factors }) => factors);
  const effects = gains.map((gain) => gain && mainEffects(gain.means, columns, gain.noise, confidence));
  const curves = figures.map((_, figure) =>
    effects.map((effect, option) => ({
      mean: means[option]!,
      adds: effect === null ? zeros(worlds) : effect.figures[figure]!.values,
    })),
  );
  const beats = (variant: number, other: number): number | null => {
    const gain = variant === other ? null : against(variant, other);
    return gain && chanceAboveZero(gain.means, gain.noise);
  };
  const decision: DoubtDecision = {
    best: options[best]!,
    variants: values.map((_, variant) => {
      const option = options.indexOf(variant);
      if (option === -1) return null;
      const chance = option === best ? null : beats(variant, options[best]!);
      const drop = chance !== null && chance < DROPPED && chances[option]! < DROPPED;
      const told = { chanceBest: chances[option]!, bestWithin: chanceWithin(chances[option]!, worlds, confidence) };
      return { behind: means[best]! - means[option]!, chance, regret: regrets[option]!, ...told, drop };
    }),
    worth: value,
    figures: curves.map((options) => worthOfCurves(options)),
    beats: options.length > MAX_PAIRED ? null : matrixOf(values.length, options, beats),
  };
  return { decision, curves };
}

/** Each pair is weighed once: what one wins the other loses. */
function matrixOf(
  variants: number,
  options: readonly number[],
  beats: (variant: number, other: number) => number | null,
): (number | null)[][] {
  const matrix = Array.from({ length: variants }, () => new Array<number | null>(variants).fill(null));
  for (const [at, one] of options.entries())
    for (const other of options.slice(at + 1)) {
      const chance = beats(one, other);
      matrix[one]![other] = chance;
      matrix[other]![one] = chance === null ? null : 1 - chance;
    }
  return matrix;
}

/** As if worlds were drawn one by one; spread over a hypercube they tell more, so the interval is rather too wide. */
function chanceWithin(chance: number, worlds: number, confidence: number): Between {
  const { low, high } = shareInterval(chance * worlds, worlds, confidence)!;
  return { low, high };
}

/** Differences day by day: both variants have the same luck. */
function paired(
  one: readonly (readonly (number | null)[])[],
  other: readonly (readonly (number | null)[])[],
  sign: number,
): (number | null)[][] {
  return one.map((days, world) =>
    days.map((value, day) => {
      const beside = other[world]![day]!;
      return value === null || beside === null ? null : sign * (value - beside);
    }),
  );
}

function zeros(count: number): number[] {
  return new Array<number>(count).fill(0);
}

function present(days: readonly (number | null)[]): number[] {
  return days.filter((value) => value !== null);
}

function meanOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}
