import type { Plan, Week } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import type { DayRecord, StateTrace, StepTrace, Traces } from "../../day/engine/index.ts";
import {
  costSheet,
  cutShortKeys,
  dayNotes,
  massBalance,
  needsBinding,
  type ResponseInfo,
  supportOf,
  utilitySheet,
} from "../../day/observations/index.ts";
import { type ElementaryEffects, elementaryEffects, levelSteps, pairMeans } from "../../maths/statistics/index.ts";
import { does } from "../../text/kinds/index.ts";
import { SECONDS_PER_DAY } from "../../text/units/index.ts";
import { decide } from "../decision/index.ts";
import {
  drawnVariants,
  endedDay,
  type MeanEstimate,
  type StudyResults,
  type VariantResults,
  type WeekOutline,
} from "../results/index.ts";
import { comparisons } from "./comparisons.ts";
import { askedKeys, knownResponses, UNFINISHED } from "./daySource.ts";
import { killLineResultsOf } from "./killLineResultsOf.ts";
import { meanEstimate, type ValuesByResponse } from "./meanEstimate.ts";
import { procedureResults } from "./procedureResults.ts";
import { studyEffects } from "./studyEffects.ts";
import type { VariantDays } from "./variantDays.ts";
import { whyOf } from "./whyOf.ts";

/** What results say about how they were made. */
export interface Provenance {
  /** Version of this program. */
  gambrel: string;
  /** Command line that repeats the run. */
  command: string;
  /** See `StudyResults.inputsSha256`. */
  inputsSha256?: string;
}

/** Which first days are kept whole; of any other, how it ended. */
export interface KeptDays {
  /** Every one; else those that are drawn. */
  all: boolean;
  /** The first day of a variant with its traces, simulated once more where they were not recorded. */
  drawnDay(variant: number): DayRecord;
}

/**
 * Puts the days of a study together: `outcomes`, one for each variant, whatever the order in which days were finished.
 * Without `kept` every first day is kept as it is.
 */
export function assembleResults(
  study: Study,
  outcomes: readonly VariantDays[],
  { gambrel, command, inputsSha256 }: Provenance,
  kept: KeptDays | null = null,
): StudyResults {
  const { name, question, reader, seed, confidence, factors } = study;
  const responses = reportedResponses(study, outcomes);
  const replications = Math.max(...outcomes.map(({ days }) => days));
  const valuesOf = outcomes.map((each) =>
    valuesByKey(
      each,
      responses.map(({ key }) => key),
      replications,
    ),
  );
  const estimates = valuesOf.map((values) => estimatesOf(values, responses, study));
  const compared = comparisons(study, valuesOf, responses);
  const whys = study.variants.map(({ plan }, index) => (study.why ? whyOf(plan, outcomes[index]!, study) : null));
  const screening = screeningOf(study, estimates, responses);
  const decision = decide(
    study,
    responses,
    outcomes.map((each) => valuesByKey(each, decidedBy(each, responses), replications)),
    {
      whys,
      effects: screening?.[responses[0]?.key ?? ""] ?? null,
    },
  );
  const drawn = drawnVariants({ responses, variants: compared, decision });
  return {
    format: 1,
    gambrel,
    ...(inputsSha256 === undefined ? {} : { inputsSha256 }),
    study: { name, question, reader, seed, replications, confidence, command },
    plan: aboutPlan(study.variants[0]!.plan),
    responses,
    factors,
    procedure: procedureResults(study, (key) => outcomes.map((each) => each.valuesOf(key))),
    screening,
    levelSteps: stepsOf(study, valuesOf, responses),
    effects: effectsOf(study, valuesOf, responses),
    capacity: null,
    decision,
    advice: null,
    drawn,
    variants: study.variants.map((variant, index): VariantResults => {
      return {
        name: variant.name,
        days: outcomes[index]!.days,
        levels: variant.levels,
        set: variant.set,
        estimates: estimates[index]!,
        ...compared[index]!,
        values: valuesOf[index]!,
        killLine: killLineResultsOf(variant.plan, outcomes[index]!, study),
        why: whys[index]!,
        ...firstDay(variant.plan, outcomes[index]!.firstDay, index, drawn, kept),
      };
    }),
  };
}

/** A study of hundreds of variants would be hundreds of megabytes with every first day whole. */
function firstDay(plan: Plan, day: DayRecord, variant: number, drawn: readonly number[], kept: KeptDays | null) {
  const notes = dayNotes(plan, day);
  if (kept !== null && !kept.all && !drawn.includes(variant)) return { dayNotes: notes, day: endedDay(day) };
  const whole = day.traces === null && kept !== null ? kept.drawnDay(variant) : day;
  return {
    dayNotes: notes,
    massBalance: massBalance(day, plan),
    utilitySheet: utilitySheet(day, plan),
    costSheet: costSheet(day, plan),
    day: keptDay(whole),
  };
}

function keptDay({ week, ...day }: DayRecord): DayRecord {
  return {
    ...day,
    perHead: null,
    traces: day.traces === null ? null : roundedTraces(day.traces),
    ...(week === undefined ? {} : { week: { ...week, days: week.days.map(keptDayOfWeek) } }),
  };
}

/** The day that stands for the week is kept whole; of the others only what the week's board is drawn from. */
function keptDayOfWeek(day: DayRecord): DayRecord {
  const kept = keptDay(day);
  const { traces } = kept;
  if (traces === null) return kept;
  const queues = traces.queues.map((trace, stage) => (mayFill(day, stage) ? trace : emptied(trace)));
  return { ...kept, traces: { ...traces, queues, states: [], entered: [] } };
}

/** The board draws what fills up: chillers, not the places before a station. */
function mayFill({ stages }: DayRecord, stage: number): boolean {
  return stages[stage] !== undefined && does(stages[stage], "hold heads");
}

function emptied<Trace extends Traces["queues"][number]>(trace: Trace): Trace {
  return trace.kind === "binned" ? { ...trace, high: [], low: [], mean: [] } : { ...trace, times: [], values: [] };
}

/**
 * The responses the study names, its headline first; the usual ones when it names none. When a day did not end by
 * itself the response that says so joins them unasked: means over such days must not be read without it.
 */
function reportedResponses(study: Study, outcomes: readonly VariantDays[]): ResponseInfo[] {
  const known = knownResponses(study);
  const asked = askedKeys(study);
  const someUnfinished = outcomes.some((each) => each.valuesOf(UNFINISHED).includes(1));
  const cutShort = study.variants
    .flatMap(({ plan }) => cutShortKeys(plan))
    .filter((key) => outcomes.some((each) => each.keys.includes(key) && each.valuesOf(key).includes(1)));
  const keys = new Set(someUnfinished ? [...asked, UNFINISHED, ...cutShort] : asked);
  return [...keys].map((key) => {
    const response = known.get(key);
    if (response === undefined) throw new Error(`assembleResults: no variant has a response "${key}"`);
    return response;
  });
}

/** A variant that was given up early has no value on the days that only others were run. */
function valuesByKey(outcome: VariantDays, keys: readonly string[], length: number): ValuesByResponse {
  const padding = new Array<null>(length - outcome.days).fill(null);
  return Object.fromEntries(keys.map((key) => [key, [...outcome.valuesOf(key), ...padding]]));
}

/** Those that a decision needs beside what is reported, too; why days ended when they did is told apart. */
function decidedBy({ keys }: VariantDays, responses: readonly ResponseInfo[]): string[] {
  return [...new Set([...responses.map(({ key }) => key), ...keys.filter((key) => !needsBinding(key))])];
}

function estimatesOf(
  values: ValuesByResponse,
  responses: readonly ResponseInfo[],
  study: Study,
): Record<string, MeanEstimate> {
  return present(responses.map((info) => [info.key, meanEstimate(values, info.key, study, supportOf(info))]));
}

function screeningOf(
  study: Study,
  estimates: readonly Record<string, MeanEstimate>[],
  responses: readonly ResponseInfo[],
): StudyResults["screening"] {
  if (study.design.kind !== "screening") return null;
  const effects = ({ key }: ResponseInfo) => {
    const means = estimates.map((found) => found[key]?.mean ?? null);
    return screeningEffects(study, means, study.confidence)!;
  };
  return Object.fromEntries(responses.map((info) => [info.key, effects(info)]));
}

/** Variants that were given up rest on other days than the rest, so after a selection steps are not averaged. */
function stepsOf(
  study: Study,
  values: readonly ValuesByResponse[],
  responses: readonly ResponseInfo[],
): StudyResults["levelSteps"] {
  const { design, factors, procedure, confidence, variants } = study;
  if (factors.length === 0 || design.kind === "screening" || procedure.selection !== null) return null;
  const levels = variants.map((variant) => variant.levels);
  const steps = ({ key }: ResponseInfo) => {
    const observed = values.map((each) => (procedure.antithetic ? pairMeans(each[key]!) : each[key]!));
    return levelSteps(levels, observed, confidence);
  };
  return Object.fromEntries(responses.map((info) => [info.key, steps(info)]));
}

/** More responses than this would keep a reader, and a study of many points, waiting. */
const MAX_EFFECT_RESPONSES = 6;

/** As with steps, variants that were given up rest on other days than the rest. */
function effectsOf(
  study: Study,
  values: readonly ValuesByResponse[],
  responses: readonly ResponseInfo[],
): NonNullable<StudyResults["effects"]> | null {
  const { design, procedure } = study;
  const isSpread = design.kind === "factorial" || design.kind === "latin hypercube";
  if (!isSpread || procedure.selection !== null) return null;
  const told = responses.slice(0, MAX_EFFECT_RESPONSES);
  const observed = ({ key }: ResponseInfo) =>
    values.map((each) => (procedure.antithetic ? pairMeans(each[key]!) : each[key]!));
  return Object.fromEntries(told.map((info) => [info.key, studyEffects(study, observed(info))]));
}

/** Leaves out what is null: a key that is absent means "not applicable". */
function present<Found>(entries: readonly (readonly [string, Found | null])[]): Record<string, Found> {
  return Object.fromEntries(entries.filter((entry): entry is [string, Found] => entry[1] !== null));
}

function aboutPlan(plan: Plan): StudyResults["plan"] {
  return {
    name: plan.name,
    notes: plan.notes,
    sources: plan.sources,
    targetHeadsPerHour: plan.targetHeadsPerSecond === null ? null : plan.targetHeadsPerSecond * 3600,
    ...hoursOf(plan.day),
    cleaningSeconds: plan.day.cleaning?.seconds ?? 0,
    limitSources: Object.fromEntries(plan.limits.map(({ name, source }) => [name, source])),
    ...(plan.week === undefined ? {} : { week: weekOutline(plan.week) }),
  };
}

function hoursOf({ shifts, breaks }: Plan["day"]) {
  return {
    breaks: breaks.map(({ name, atSeconds, lengthSeconds }) => {
      return { name, fromSeconds: atSeconds, toSeconds: atSeconds + lengthSeconds };
    }),
    shifts: shifts.map(({ name, fromSeconds, toSeconds }) => ({ name, fromSeconds, toSeconds })),
  };
}

function weekOutline({ begins, days, warmUpDays, orders }: Week): WeekOutline {
  return {
    begins,
    days: days.map(({ name, plan, startSeconds }, index) => ({
      ...{ name, works: plan !== null, counted: plan !== null && index >= warmUpDays, startSeconds },
      ...(plan === null ? { shifts: [], breaks: [] } : hoursOf(plan.day)),
    })),
    orders: orders.map((order) => ({ ...order, day: days[Math.floor(order.bySeconds / SECONDS_PER_DAY)]?.name ?? "" })),
  };
}

/**
 * The elementary effects of a study's factors on one response, in the order of its factors; null when the study is no
 * screening. `means[variant]`: the response's mean over the days of each variant, null where it has none.
 */
export function screeningEffects(
  { design, variants, factors }: Pick<Study, "design" | "variants" | "factors">,
  means: readonly (number | null)[],
  confidence: number,
): (ElementaryEffects | null)[] | null {
  if (design.kind !== "screening") return null;
  const { levels, trajectories } = design;
  const points = trajectories.map((indices) =>
    indices.map((variant) => ({
      point: variants[variant]!.levels.map((level) => level / (levels - 1)),
      value: means[variant] ?? null,
    })),
  );
  return elementaryEffects(points, factors.length, confidence);
}

/**
 * Traces in bins with means and position-seconds to a millionth: what a result keeps of them, and what sums over a day
 * cannot tell from the whole. Lowest and highest values stay as they are; who asked for exact traces gets all of them as
 * they were recorded.
 */
export function roundedTraces(traces: Traces): Traces {
  const { queues, wip, out, arrived, hung, entered, crews, states } = traces;
  if (out.kind === "exact") return traces;
  return {
    queues: queues.map(rounded),
    wip: wip.map(rounded),
    out: rounded(out),
    arrived: rounded(arrived),
    hung: rounded(hung),
    entered: entered.map(rounded),
    crews: crews.map(({ name, busy, present }) => ({ name, busy: rounded(busy), present: rounded(present) })),
    states: states.map((trace): StateTrace => ({ ...trace, seconds: trace.seconds.map(millionth) })),
  };
}

function rounded(trace: StepTrace): StepTrace {
  return trace.kind === "exact" ? trace : { ...trace, mean: trace.mean.map(millionth) };
}

function millionth(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
