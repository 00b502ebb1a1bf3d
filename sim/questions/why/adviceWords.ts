import { listWords } from "../../asked/plan/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import type { Advice, OtherChange, TriedChange } from "../../days/results/index.ts";
import { formatConfidence, formatDifference, formatDuration, formatSpan } from "../../text/units/index.ts";
import type { PlanChange } from "./change.ts";
import type { ChangesToTry } from "./changesToTry.ts";
import { gainEnds } from "./gains.ts";

type Told = Omit<Advice, "words">;

export interface WordsContext {
  /** A gain up to which nobody would change a plant. */
  little: number;
  /** The least gain that is worth a change by itself: the verdict goes by it. */
  matters: number;
  asked: ChangesToTry;
  /** Those that `changes` of the advice tell of. */
  changes: readonly PlanChange[];
  confidence: number;
  /** What was simulated so many of. */
  noun: "days" | "weeks";
  /** How many time limits the plan watches. */
  limits: number;
}

const MAX_LOSSES = 3;

/** Of the day, or of one day of a week. */
export function isEnd({ key }: Pick<ResponseInfo, "key">): boolean {
  return key === "finish" || key.endsWith(".finish");
}

/**
 * The advice in sentences, for terminal, report and page alike: where to start and what each change is worth, place by
 * place, the best first; what is as good; what makes no difference or makes it worse; what is not offered and why; what was
 * not tried; how many days it took.
 */
export function adviceWords(advice: Told, context: WordsContext): string[] {
  const told = advice.changes.filter((change) => change.gains && Math.abs(change.difference.mean) > context.little);
  return [
    ...(told.length === 0 ? [nothing(advice)] : placeSentences(told, advice, context)),
    ...asGood(told, advice),
    ...smallGains(advice, told, context),
    ...noDifference(advice, told, context),
    ...losses(advice, context),
    ...notFollowedUp(advice, context),
    ...advice.leftOut.map(({ label, reason }) => `Not offered: ${label}, because ${reason}.`),
    ...notTried(context),
    effortWords(advice, context),
  ];
}

function nothing({ response, effort }: Told): string {
  const what = effort.pairs > 0 ? "None of the changes tried, alone or in pairs," : "None of the changes tried";
  return isEnd(response) ? `${what} is shown to end work earlier.` : `${what} is shown to bring more heads.`;
}

/** One paragraph for each place, that of the best change first. */
function placeSentences(
  told: readonly TriedChange[],
  { response }: Told,
  { changes, matters }: WordsContext,
): string[] {
  const lead = told.some(({ difference }) => Math.abs(difference.mean) >= matters) ? "Start with" : "Most is gained at";
  const places = [...new Set(told.map(({ of }) => of))];
  return places.map((place, rank) => {
    const [best, ...others] = told.filter(({ of }) => of === place);
    const known = (change: TriedChange) => changes.find(({ label }) => label === change.label)!;
    const { phrase, plural } = known(best!);
    const first = `${rank === 0 ? lead : "Next,"} ${place}: ${phrase} ${effect(best!, plural, response)}.`;
    if (others.length === 0) return first;
    const more = others.map((other) => `${known(other).phrase}, ${worth(other, response)}`);
    return `${first} Also there: ${more.join("; ")}.`;
  });
}

/** "ends work 78 min (70 to 86 min) earlier", "brings 12 heads/h (9 to 15) more". */
function effect(change: TriedChange, plural: boolean, response: ResponseInfo): string {
  if (isEnd(response)) return `${plural ? "end" : "ends"} work ${worth(change, response)} earlier`;
  return `${plural ? "bring" : "brings"} ${worth(change, response)} more`;
}

function worth(change: TriedChange, response: ResponseInfo): string {
  const [low, high] = gainEnds(change.difference, response);
  const mean = Math.abs(change.difference.mean);
  return spreadWords(mean, low, high, response);
}

function asGood(told: readonly TriedChange[], { changes }: Told): string[] {
  const rivals = changes.filter((change) => change !== changes[0] && change.mayBeBest && told.includes(change));
  if (told.length === 0 || rivals.length === 0) return [];
  return [`No clear difference from the best: ${rivals.map(({ label }) => label).join("; ")}.`];
}

function smallGains({ changes, response }: Told, told: readonly TriedChange[], { little }: WordsContext): string[] {
  const small = changes.filter(
    (change) => change.gains && !told.includes(change) && !within(gainEnds(change.difference, response), little),
  );
  if (small.length === 0) return [];
  return [`Small gains: ${small.map((change) => `${change.label}, ${worth(change, response)}`).join("; ")}.`];
}

/** With intervals that lie wholly within so much on either side of no difference. */
function noDifference(advice: Told, told: readonly TriedChange[], { little }: WordsContext): string[] {
  const { response, changes, others } = advice;
  const own = changes.filter(
    (change) => !told.includes(change) && within(gainEnds(change.difference, response), little),
  );
  const labels = [...own, ...others.filter((other) => within(otherEnds(other), little))].map(({ label }) => label);
  if (labels.length === 0) return [];
  return [`No difference larger than ${sizeWords(little, response)}: ${labels.join("; ")}.`];
}

function losses({ others, response }: Told, { little }: WordsContext): string[] {
  const found = others
    .map((other) => ({ label: other.label, loss: lossEnds(other, response) }))
    .filter(({ loss }) => loss[0] > 0 && loss[1] > little)
    .sort((a, b) => b.loss[0] - a.loss[0])
    .slice(0, MAX_LOSSES);
  if (found.length === 0) return [];
  const worse = found.map(
    ({ label, loss: [low, high] }) => `${label}, ${spreadWords((low + high) / 2, low, high, response)}`,
  );
  return [`${isEnd(response) ? "Work ends later" : "Fewer heads come out"} with: ${worse.join("; ")}.`];
}

function notFollowedUp(advice: Told, { little, noun }: WordsContext): string[] {
  const { response, changes, others } = advice;
  const unclear = changes.filter((change) => !change.gains && !within(gainEnds(change.difference, response), little));
  const open = others.filter((other) => !within(otherEnds(other), little) && lossEnds(other, response)[0] <= 0);
  const list = (found: readonly { label: string }[]) => found.map(({ label }) => label).join("; ");
  return [
    ...(unclear.length === 0 ? [] : [`No difference shown, but one is possible: ${list(unclear)}.`]),
    ...(open.length === 0 ? [] : [`Dropped early, because others looked better after a few ${noun}: ${list(open)}.`]),
  ];
}

function otherEnds({ difference: { mean, low, high } }: OtherChange): [number, number] {
  return [low ?? mean, high ?? mean];
}

function lossEnds(other: OtherChange, { better }: ResponseInfo): [number, number] {
  const [low, high] = otherEnds(other);
  return better === "less" ? [low, high] : [-high, -low];
}

function within([low, high]: [number, number], little: number): boolean {
  return low >= -little && high <= little;
}

function notTried({ asked: { guarded, fullCrews, dropped = 0 }, limits }: WordsContext): string[] {
  return [
    ...(dropped === 0
      ? []
      : [`${dropped} changes more gained less, or nothing, on the day alone, so they were not tried in weeks.`]),
    ...(guarded.length === 0
      ? []
      : [`Not tried: quicker work at ${listWords(guarded)}. The animals or hygiene need that time.`]),
    ...(fullCrews.length === 0
      ? []
      : [
          `In ${listWords(fullCrews)} every position has its people, so one more person alone would have nowhere to work. One more position was tried with its person.`,
        ]),
    ...(limits > 0
      ? []
      : ["The plan has no time limit, so harm to animals or hygiene could not show. Give it limits before you act."]),
    "No break, bleeding or chilling was shortened.",
  ];
}

function effortWords({ days, changes, others, leftOut, effort }: Told, { confidence, noun }: WordsContext): string {
  const pairs = effort.pairs === 0 ? "" : ` and ${effort.pairs} ${effort.pairs === 1 ? "pair" : "pairs"} of them`;
  const own =
    changes.length + leftOut.length > 0
      ? ` Those told first had ${days} new ${noun}; their ranges are at ${formatConfidence(confidence)}, sure even though all were compared.`
      : "";
  const rest = others.length === 0 ? "" : ` The others had ${effort.firstDays} to ${effort.secondDays} ${noun} each.`;
  return `Each figure is for that change alone; once one is made, the others may be worth less. ${effort.searchDays + effort.ownDays} ${noun} were simulated to try ${effort.singles} changes${pairs}.${own}${rest}`;
}

/** "78 min (70 to 86 min)", "12 carcasses/h (9 to 15 carcasses/h)": a size with its interval, no finer than the interval is wide. */
export function spreadWords(mean: number, low: number, high: number, response: ResponseInfo): string {
  if (low === high) return formatSpan(mean, response, "plain");
  const [size, range] = formatDifference({ mean, low, high }, response, "plain");
  return `${size} (${range})`;
}

/** "1 min", "20 s", "2 carcasses/h": a round number. */
export function sizeWords(size: number, response: ResponseInfo): string {
  const isTime = response.format === "clock" || response.format === "duration";
  return isTime ? formatDuration(size) : formatSpan(size, response, "plain");
}
