import type { ResponseInfo } from "../../day/observations/index.ts";
import {
  capital,
  formatDuration,
  formatEstimate,
  formatResponse,
  formatShare,
  formatSpan,
  textTable,
} from "../../text/units/index.ts";
import type { Between, Doubt, DoubtContender, DoubtDecision, DoubtEstimate, DoubtFigure } from "./doubt.ts";
import { partWords } from "./partWords.ts";

/** What was found, for a reader without statistics. */
export interface DoubtWords {
  verdict: string;
  words: string[];
  /** Which figure to measure, and which need not be. */
  next: string[];
  tables: string[][];
}

/** Under this share of what is not known a figure is not named as a reason. */
const NAMED = 0.1;
/** Under the first share, and surely under the second, it is said to do nothing. */
const NOTHING = 0.05;
const AT_MOST = 0.25;
/** Under this share of the span not knowing is not worth a sentence. */
const HARDLY = 0.03;
const MAX_NAMED = 3;
/** A rival that is better in more worlds than this leaves the choice open. */
const OPEN = 0.2;

export function doubtWords(doubt: Doubt): DoubtWords {
  const { decision, responses } = doubt;
  const best = decision?.best ?? 0;
  const [first] = responses as [ResponseInfo, ...ResponseInfo[]];
  const estimate = doubt.estimates[0]![best] ?? null;
  const span = estimate === null ? null : spanSentence(doubt, first, estimate);
  const choice = decision === null ? [] : choiceSentences(doubt, decision, first);
  const told = span ?? `${first.label}: some world has no value.`;
  const sentences = [...choice.slice(0, 1), told, ...choice.slice(1)];
  return {
    verdict: sentences[0]!,
    words: [
      ...sentences.slice(1),
      ...harmSentences(doubt),
      basis(doubt),
      ...precisionWords(doubt, first),
      ...cautions(doubt),
    ],
    next: estimate === null ? [] : nextSentences(doubt, first, estimate),
    tables: [
      ...(doubt.variants.length > 1 ? [variantRows(doubt, first)] : []),
      responseRows(doubt, best),
      ...(estimate === null ? [] : [figureRows(doubt, first, estimate)]),
      ...(estimate !== null && doubt.readings.some((advice) => advice !== null) ? [readingRows(doubt, first)] : []),
    ],
  };
}

/** "Work ends between 13:20 and 14:25 on 95 of 100 days; a third of that span is luck of the day, ..." */
export function spanSentence(doubt: Doubt, info: ResponseInfo, estimate: DoubtEstimate): string {
  const { variants, decision, calendar } = doubt;
  const { notKnown, spanNotKnown, days } = estimate;
  const isEnd = info.key === "finish";
  const of = variants.length > 1 ? ` with ${quoted(variants[decision?.best ?? 0]!)}` : "";
  if (spanNotKnown === null) {
    const mean = formatResponse(days.low, info, calendar.startClockSeconds);
    const often = notKnown === null ? `on every ${calendar.period}` : `on at least ${onDays(doubt)}`;
    return `${isEnd ? "Work ends at" : `${shortLabel(info)}:`} ${mean}${of} ${often}.`;
  }
  const ends = spanText(doubt, info, estimate, days).split(" to ").join(" and ");
  const lead = isEnd ? `Work ends between ${ends}` : `${shortLabel(info)}: between ${ends}`;
  return `${lead}${of} on ${onDays(doubt)}; ${partsSentence(doubt, estimate, spanNotKnown.value)}.`;
}

/** Without what a label defines after a comma. */
function shortLabel({ label }: ResponseInfo): string {
  return label.split(",")[0]!;
}

/** "38 s a day"; what is per hour or in per cent adds up over no day. */
function eachPeriod(size: number, info: ResponseInfo, { period }: Doubt["calendar"]): string {
  const isRate = info.format === "share" || info.unit.includes("/");
  return `${formatSpan(size, info, "plain")}${isRate ? "" : ` a ${period}`}`;
}

function onDays({ confidence, calendar }: Doubt): string {
  return `${Math.round(100 * confidence)} of 100 ${calendar.period}s`;
}

/** Both parts of the span: what luck alone would leave of it, and the rest. */
function partsSentence(doubt: Doubt, estimate: DoubtEstimate, notKnown: number): string {
  const luck = `${partWords(1 - notKnown)} of that span is luck of the ${doubt.calendar.period}`;
  if (notKnown < HARDLY) return `${luck}: what is not known hardly moves it`;
  return `${luck}, the rest is that we do not know ${reasons(doubt, estimate)}`;
}

/** The figures that most of it is owed to. */
function reasons({ figures }: Doubt, estimate: DoubtEstimate): string {
  const named = ranked(estimate)
    .filter(({ value }) => value >= NAMED)
    .slice(0, MAX_NAMED);
  return named.length === 0
    ? "the figures, none of them more than the others"
    : listed(named.map(({ figure }) => figureName(figures[figure]!)));
}

/** A figure that nobody measured is called a guess. */
function figureName({ name, kind }: DoubtFigure): string {
  return kind === "guess" ? `${name} (a guess)` : name;
}

function ranked(estimate: DoubtEstimate) {
  return estimate.figures
    .flatMap(({ share }, figure) => (share === null ? [] : [{ figure, ...share }]))
    .sort((a, b) => b.value - a.value);
}

function choiceSentences(doubt: Doubt, decision: DoubtDecision, info: ResponseInfo): string[] {
  const { variants } = doubt;
  const rivals = decision.variants
    .flatMap((each, variant) => (each?.chance == null ? [] : [{ variant, chance: each.chance, behind: each.behind }]))
    .sort((a, b) => b.chance - a.chance);
  const next = rivals[0]!;
  const [best, rival] = [quoted(variants[decision.best]!), quoted(variants[next.variant]!)];
  const often = `${worldsWords(1 - next.chance)}, by ${formatSpan(next.behind, info, "plain")} on average (${shortLabel(info)})`;
  const verdict =
    next.chance >= OPEN
      ? `Whether ${best} or ${rival} is better is open: ${best} is better in ${often}.`
      : `${best} is better than ${rival} in ${often}.`;
  const dropped = rivals
    .filter(({ variant }) => decision.variants[variant]!.drop)
    .map(({ variant }) => quoted(variants[variant]!));
  const others = dropped.length - MAX_NAMED;
  const named = others < 2 ? dropped : [...dropped.slice(0, MAX_NAMED), `${others} others`];
  const several = variants.length > 2 && dropped.length > 0;
  return [
    verdict,
    ...(several
      ? [
          `Better than ${best} in fewer than 1 of 100 worlds, so that by this result they can be dropped: ${listed(named)}.`,
        ]
      : []),
    decision.worth > 0
      ? `Choosing ${best} now gives away ${eachPeriod(decision.worth, info, doubt.calendar)} on average, against knowing every figure first.`
      : `${best} is the best in every world that was drawn, so no figure has to be known to choose it.`,
  ];
}

/** What does harm is no choice, however good the first result. */
function harmSentences({ harms, variants }: Doubt): string[] {
  return harms.flatMap((harm, variant) =>
    harm === null ? [] : [`${quoted(variants[variant]!)} is left out of the choice: ${harm}.`],
  );
}

function worldsWords(chance: number): string {
  const of100 = Math.round(100 * chance);
  return of100 === 100 ? "more than 99 of 100 worlds" : `${of100} of 100 worlds`;
}

function basis({ counts, figures, variants, calendar, precision }: Doubt): string {
  const guesses = figures.filter(({ kind }) => kind === "guess").length;
  const known =
    guesses === 0 ? "all measured" : guesses === figures.length ? "all guesses" : `${guesses} of them guesses`;
  const each = variants.length > 1 ? " of every variant" : "";
  const rounds = precision?.rounds ?? [];
  const of = (worlds: number, days: number) =>
    `${worlds} worlds with ${days} ${calendar.period}${days === 1 ? "" : "s"}`;
  const simulated =
    rounds.length > 1 ? listed(rounds.map(({ worlds, days }) => of(worlds, days))) : of(counts.worlds, counts.days);
  return `${simulated}${each} (seed "${counts.seed}"); in a world every figure is one thing that it may be: ${figures.length} uncertain, ${known}.`;
}

/** Whether worlds and days were enough for the precision asked for. */
function precisionWords({ precision, variants }: Doubt, info: ResponseInfo): string[] {
  if (precision === null) return [];
  const { wanted, reached, isEnough } = precision;
  if (reached === null) return ["The precision asked for cannot be reached: some world has no value."];
  const asked =
    wanted.kind === "relative"
      ? `${Number((100 * wanted.value).toPrecision(3))} % of it`
      : formatSpan(wanted.value, info, "plain");
  const mean = variants.length > 1 ? "mean of every variant" : "mean";
  const now = formatSpan(reached, info, "plain");
  return [
    isEnough
      ? `Chance moves the ${mean} over all worlds by ${now} at most; asked for was ${asked}.`
      : `Chance may still move the ${mean} over all worlds by ${now}, more than the ${asked} asked for: the run stopped at its most worlds.`,
  ];
}

function cautions({ unfinished, figures }: Doubt): string[] {
  return [
    ...(unfinished === 0
      ? []
      : [
          `Take care: ${unfinished} of the simulated days did not end by themselves; their end of work is a lower bound.`,
        ]),
    ...(figures.some(({ kind }) => kind === "guess")
      ? ["A range that was guessed is a guess, and so is what follows from it."]
      : []),
  ];
}

function nextSentences(doubt: Doubt, info: ResponseInfo, estimate: DoubtEstimate): string[] {
  const { figures, decision, calendar } = doubt;
  const order = ranked(estimate);
  const [first, second] = order;
  if (first === undefined || (estimate.spanNotKnown?.value ?? 0) < HARDLY)
    return [`Measuring would hardly narrow the span: it is luck of the ${calendar.period}.`];
  const narrower = formatSpan(estimate.figures[first.figure]!.narrower, info, "plain");
  const unsure = second !== undefined && first.low <= second.value;
  return [
    `Measure first: ${figureName(figures[first.figure]!)}, ${partWords(first.value)} of what is not known. Known exactly, it would make the span ${narrower} narrower on average.`,
    ...readingSentences(doubt, info),
    ...(unsure
      ? [
          `Which figure weighs most is not sure yet; more worlds tell (--worlds ${4 * doubt.counts.worlds} halves the ranges).`,
        ]
      : []),
    ...(decision === null || decision.worth === 0 ? [] : [choiceFigure(doubt, decision, info)]),
    ...togetherWords(doubt),
    ...nothingWords(doubt, order),
  ];
}

/** Of which figure more readings bring most, and how many of them are worth taking. */
function readingSentences({ figures, readings, calendar }: Doubt, info: ResponseInfo): string[] {
  const told = figures.flatMap((figure, index) => {
    const { steps, enough } = readings[index] ?? { steps: [], enough: null };
    return enough === null ? [] : [{ figure, step: steps[enough]! }];
  });
  if (told.length === 0) return [];
  const { figure, step } = told.reduce((best, other) => (other.step.narrower > best.step.narrower ? other : best));
  const { readings: count, seconds, left, narrower, worth } = step;
  const more = figure.readings!.taken === null ? "" : "more ";
  const time = seconds === null ? "" : ` (${formatDuration(seconds)} of watching, or longer)`;
  const own = left < 0.95 ? ` and leave ${partWords(left)} of what it may be off by` : "";
  const choice =
    worth === null || worth <= 0 ? "" : `; for the choice they are worth ${eachPeriod(worth, info, calendar)}`;
  const span = formatSpan(narrower, info, "plain");
  return [
    `Take ${count} ${more}readings of ${figureName(figure)}${time}: they make the span ${span} narrower on average${own}${choice}.`,
  ];
}

/** What two figures do only together belongs to neither of them. */
function togetherWords({ joint, figures }: Doubt): string[] {
  const pair = joint?.pairs[0];
  if (pair === undefined || pair.share.value < NAMED || (pair.share.low ?? 0) <= 0) return [];
  const names = listed(pair.figures.map((figure) => figureName(figures[figure]!)));
  return [`${capital(partWords(pair.share.value))} of what is not known ${names} do only together: know both.`];
}

/** The figure that could turn the choice. */
function choiceFigure({ figures, calendar }: Doubt, decision: DoubtDecision, info: ResponseInfo): string {
  const worth = Math.max(...decision.figures);
  if (worth <= 0) return "No figure alone turns the choice.";
  const name = figureName(figures[decision.figures.indexOf(worth)]!);
  return `For the choice ${name} matters most: to know it first is worth ${eachPeriod(worth, info, calendar)} on average.`;
}

function nothingWords({ figures }: Doubt, order: ReturnType<typeof ranked>): string[] {
  const little = order.filter(({ value, high }) => value < NOTHING && high <= AT_MOST);
  if (little.length === 0) return [];
  const most = Math.max(...little.map(({ high }) => high));
  const names = listed(little.map(({ figure }) => figureName(figures[figure]!)));
  return [
    `Measuring ${names} changes next to nothing (at most ${formatShare(Math.round(100 * most) / 100)} of what is not known).`,
  ];
}

function variantRows(doubt: Doubt, info: ResponseInfo): string[] {
  const { variants, decision } = doubt;
  const chances = decision === null ? [] : [`beats ${quoted(variants[decision.best]!)}`, "best of all in", "regret"];
  return textTable([
    ["variant", ...headings(doubt), ...chances],
    ...variants.map((name, variant) => [
      name,
      ...estimateCells(doubt, info, doubt.estimates[0]![variant] ?? null),
      ...(decision === null ? [] : contenderCells(decision.variants[variant] ?? null, info)),
    ]),
  ]);
}

function contenderCells(contender: DoubtContender | null, info: ResponseInfo): string[] {
  if (contender === null) return ["left out", "-", "-"];
  const { chance, regret, chanceBest } = contender;
  const of100 = (part: number) => `${Math.round(100 * part)} of 100`;
  return [chance === null ? "best" : of100(chance), of100(chanceBest), formatSpan(regret, info, "plain")];
}

function responseRows(doubt: Doubt, told: number): string[] {
  const of = doubt.variants.length > 1 ? `results with ${quoted(doubt.variants[told]!)}` : "result";
  return textTable([
    [of, ...headings(doubt)],
    ...doubt.responses.map((info, response) => [
      shortLabel(info),
      ...estimateCells(doubt, info, doubt.estimates[response]![told] ?? null),
    ]),
  ]);
}

function headings({ confidence, calendar }: Doubt): string[] {
  return ["mean", "which may be", `${Math.round(100 * confidence)} of 100 ${calendar.period}s`, "not known of it"];
}

function estimateCells(doubt: Doubt, info: ResponseInfo, estimate: DoubtEstimate | null): string[] {
  if (estimate === null) return ["-", "-", "-", "-"];
  const { full, days, spanNotKnown } = estimate;
  const [mean] = formatEstimate({ mean: estimate.mean, ...full }, info, doubt.calendar.startClockSeconds);
  return [
    mean,
    spanText(doubt, info, estimate, full),
    spanText(doubt, info, estimate, days),
    percent(spanNotKnown?.value),
  ];
}

function figureRows(doubt: Doubt, info: ResponseInfo, { figures }: DoubtEstimate): string[] {
  const { decision, joint } = doubt;
  const order = doubt.figures
    .map((figure, index) => ({ figure, index, ...figures[index]! }))
    .sort((a, b) => (b.share?.value ?? 0) - (a.share?.value ?? 0));
  return textTable([
    [
      "figure",
      "",
      "of what is not known",
      "with others",
      "narrower by",
      ...(decision === null ? [] : ["worth for the choice"]),
    ],
    ...order.map(({ figure, index, share, narrower }) => [
      figure.name,
      figure.kind,
      share === null ? "-" : `${percent(share.value)} (${percent(share.low)} to ${percent(share.high)})`,
      percent(joint?.figures[index]?.total.value),
      formatSpan(narrower, info, "plain"),
      ...(decision === null ? [] : [formatSpan(decision.figures[index]!, info, "plain")]),
    ]),
  ]);
}

/** So many more readings: how much narrower the span would be. */
function readingRows({ figures, readings, joint }: Doubt, info: ResponseInfo): string[] {
  const told = figures.flatMap((figure, index) => {
    const advice = readings[index];
    return advice == null ? [] : [{ figure, advice, weight: joint?.figures[index]?.alone.value ?? 0 }];
  });
  const shown = told[0]!.advice.steps.filter((_, step) => step % 2 === 1);
  return textTable([
    ["narrower by so many more readings", "taken", ...shown.map((step) => String(step.readings))],
    ...told
      .sort((a, b) => b.weight - a.weight)
      .map(({ figure, advice }) => [
        figure.name,
        String(figure.readings!.taken ?? "none"),
        ...advice.steps.filter((_, step) => step % 2 === 1).map(({ narrower }) => formatSpan(narrower, info, "plain")),
      ]),
  ]);
}

function spanText({ calendar }: Doubt, info: ResponseInfo, { mean }: DoubtEstimate, span: Between): string {
  if (span.low === span.high) return formatResponse(span.low, info, calendar.startClockSeconds);
  const [alone, range] = formatEstimate({ mean, ...span }, info, calendar.startClockSeconds);
  return range === "" ? alone : range;
}

function percent(share: number | undefined): string {
  return share === undefined ? "-" : `${Math.round(100 * share)} %`;
}

function quoted(name: string): string {
  return `\u201C${name}\u201D`;
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
