import type { ResponseInfo } from "../../day/observations/index.ts";
import { type Estimate, estimate, studentQuantile } from "../../maths/statistics/index.ts";
import { formatDecimals, formatSpan } from "../../text/units/index.ts";

/** Values by response, one for each day; null where a day has none. */
type Values = Readonly<Record<string, readonly (number | null)[]>>;

/** A limit of the plan, as far as harm goes by it. */
interface WatchedLimit {
  name: string;
  minSeconds: number | null;
  maxSeconds: number | null;
}

/** What watches over animals, people and hygiene: the plan's limits. */
interface Watched {
  limits: readonly WatchedLimit[];
  /** The plan's own, where it has one. */
  week?: unknown;
}

/** Fewer heads than this share of the day's are rounding, not a plant that handles fewer. */
const FEWER_HEADS = 0.002;
const UNFINISHED = "unfinished";
/** Of a week: what was full over the night, so that a day did not end. */
const FULL = "cutShortFull.";
const HEADS = "carcasses";
/** Of a week, at the end of which some of them are still in the chiller. */
const WEEK_HEADS = "week.made";
const SECONDS: ResponseInfo = { key: "", label: "", unit: "s", format: "duration", better: null };

/** What has to be known of each day to see harm. */
export function harmResponses({ limits, week }: Watched): string[] {
  return [
    HEADS,
    ...(week === undefined ? [] : [WEEK_HEADS]),
    ...limits.flatMap((limit) => [beyondKey(limit), ...excessKeys(limit).map(({ key }) => key)]),
  ];
}

/** One-sided error probabilities of calling harm what is luck: of a share of heads, and of the worst head, which swings more. */
const SHARE_ALPHA = 0.1;
const WORST_ALPHA = 0.025;
/** The worst head counts as worse off from this part of the limit on: a second of half an hour is no harm. */
const WORST_PART = 0.01;

/**
 * Why a change must not be offered, going by days that the plan and the change both have; null where nothing speaks
 * against it. A change does harm where, over these days, more of the heads lie outside any of the plan's time limits
 * (one-sided 90 % by paired Student t), or the worst head of a day lies further outside (97.5 %, and by a hundredth of the limit at least), or fewer heads are
 * handled, or a day does not end by itself any more. The levels err on the safe side: one harmless change in ten is left out for
 * each limit that chance moves.
 */
export function harmOf({ limits }: Watched, before: Values, after: Values): string | null {
  if (count(after[UNFINISHED]) > count(before[UNFINISHED])) return unfinishedWords(after);
  const [key, time] = before[WEEK_HEADS] === undefined ? [HEADS, "day"] : [WEEK_HEADS, "week"];
  const heads = difference(before[key], after[key]);
  const mean = estimate(before[key] ?? [], 0.95)?.mean ?? 0;
  if (heads !== null && heads.mean < -FEWER_HEADS * mean && isMore(negative(heads), SHARE_ALPHA))
    return `it handles ${plain(-heads.mean)} fewer heads a ${time}`;
  for (const limit of limits) {
    const harm = shareHarm(limit, before, after) ?? worstHarm(limit, before, after);
    if (harm !== null) return harm;
  }
  return null;
}

/** Of a week the chiller that was full is named: who is missing behind it stops the line before it. */
function unfinishedWords(after: Values): string {
  const full = Object.keys(after).filter((key) => key.startsWith(FULL) && count(after[key]) > 0);
  const words = "its days did not end by themselves";
  if (full.length === 0) return words;
  const names = full.map((key) => `'${key.slice(FULL.length)}'`).join(" and ");
  return `${words}: ${names} was full, and nobody took anything out of it any more`;
}

function shareHarm(limit: WatchedLimit, before: Values, after: Values): string | null {
  const shares = [before, after].map((values) => zeroed(values[beyondKey(limit)]));
  const more = difference(shares[0], shares[1]);
  if (more === null || !isMore(more, SHARE_ALPHA)) return null;
  const [from, to] = shares.map((list) => estimate(list!, 0.95)!.mean * 100);
  const decimals = Math.min(4, Math.max(0, 1 - Math.floor(Math.log10(to! - from!))));
  return `${formatDecimals(to!, decimals)} % instead of ${formatDecimals(from!, decimals)} % of heads would be outside the limit '${limit.name}'`;
}

/** How far the worst head of a day lies outside; a head inside its limit is not worse off for being nearer to it. */
function worstHarm(limit: WatchedLimit, before: Values, after: Values): string | null {
  const { minSeconds, maxSeconds } = limit;
  for (const { key, outside } of excessKeys(limit)) {
    const excess = [before, after].map((values) =>
      (values[key] ?? []).map((worst) => (worst === null ? 0 : Math.max(0, outside(worst)))),
    );
    const more = difference(excess[0], excess[1]);
    if (more !== null && more.mean > WORST_PART * (maxSeconds ?? minSeconds ?? 0) && isMore(more, WORST_ALPHA))
      return `the worst head of a day would be ${formatSpan(more.mean, SECONDS, "plain")} further outside the limit '${limit.name}'`;
  }
  return null;
}

function beyondKey({ name }: WatchedLimit): string {
  return `beyond.${name}`;
}

function excessKeys({ name, minSeconds, maxSeconds }: WatchedLimit): { key: string; outside(worst: number): number }[] {
  const over = maxSeconds === null ? [] : [{ key: `worst.${name}`, outside: (worst: number) => worst - maxSeconds }];
  const key = maxSeconds === null ? `worst.${name}` : `shortest.${name}`;
  return [...over, ...(minSeconds === null ? [] : [{ key, outside: (worst: number) => minSeconds - worst }])];
}

/** A day on which no head passed the two points of a limit breaks nothing. */
function zeroed(values: readonly (number | null)[] | undefined): number[] {
  return (values ?? []).map((value) => value ?? 0);
}

function count(values: readonly (number | null)[] | undefined): number {
  return (values ?? []).filter((value) => value === 1).length;
}

function difference(before: readonly (number | null)[] | undefined, after: readonly (number | null)[] | undefined) {
  const days = Math.min(before?.length ?? 0, after?.length ?? 0);
  const pairs = Array.from({ length: days }, (_, day) => {
    const [from, to] = [before![day]!, after![day]!];
    return from === null || to === null ? null : to - from;
  });
  return estimate(pairs, 0.95);
}

/** Beyond rounding, and beyond what luck does with the given probability at most. One day alone is taken at its word. */
function isMore({ mean, sd, n }: Estimate, alpha: number): boolean {
  if (mean <= 1e-9) return false;
  return n < 2 || mean > (studentQuantile(1 - alpha, n - 1) * sd) / Math.sqrt(n);
}

/** Whether values of the same days are more afterwards, beyond rounding and luck; `alpha`: probability of calling luck so. */
export function shownMore(
  before: readonly (number | null)[],
  after: readonly (number | null)[],
  alpha: number,
): boolean {
  const more = difference(before, after);
  return more !== null && isMore(more, alpha);
}

function negative(found: Estimate): Estimate {
  return { ...found, mean: -found.mean };
}

function plain(value: number): string {
  return value.toFixed(value < 10 ? 1 : 0);
}
