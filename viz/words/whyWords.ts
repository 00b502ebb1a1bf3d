import type { Cause, Estimate, Why } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { causeWords } from "./causeWords.ts";
import { responseFormat } from "./responseFormat.ts";

const MOST = 3;
/** What the line waited for less of the day than this is not told. */
const MIN_SHARE = 0.05;
/** Causes by which a stage sets the pace, rather than stands. */
const PACE: ReadonlySet<Cause> = new Set<Cause>(["work", "place", "people", "absent", "few people", "dwell", "chain"]);

/** What the sentences of `whyWords` do not say; stands below them wherever they are. */
export const WHY_NOTE =
  "This shows where the time went. To see what a change is worth, run `gambrel why PLAN`: it simulates the obvious changes. Do not shorten breaks, bleeding or chilling to gain time.";

/**
 * Where the time to the end of work went, the longest first: up to three stages, loads or vessels that the line waited for,
 * each with how long and why. It ranks no change and promises nothing: what a change is worth has to be simulated.
 */
export function whyWords(why: Why): string[] {
  const stages = why.stages.map(({ stage, share }) => ({
    seconds: share.mean * why.total.mean,
    sentence: stageSentence(stage, share, why),
  }));
  const others = why.parts
    .filter(({ stage }) => stage === "")
    .map((part) => ({ seconds: part.seconds.mean, sentence: otherSentence(part, why) }));
  return [...stages, ...others]
    .sort((a, b) => b.seconds - a.seconds)
    .filter(({ seconds }, rank) => rank === 0 || seconds >= MIN_SHARE * why.total.mean)
    .slice(0, MOST)
    .map(({ sentence }) => sentence);
}

function stageSentence(stage: string, share: Estimate, why: Why): string {
  const most = why.parts.find((part) => part.stage === stage);
  const reason = most === undefined ? "" : `, mostly because ${causeWords(most).because}`;
  const what = most !== undefined && !PACE.has(most.cause) ? "the line waited for" : "the line ran at the pace of";
  return `For ${ofDay(timesEstimate(share, why.total.mean), why)} ${what} ${isolated(stage)}${reason}.`;
}

function otherSentence(part: Why["parts"][number], why: Why): string {
  const { where, because } = causeWords(part);
  return `For ${ofDay(part.seconds, why)} the line waited for ${where}, because ${because}.`;
}

/** "7 h 49 (7 h 41 to 7 h 57) of the 8 h 41 to the end of work". */
function ofDay(span: Estimate, { total }: Why): string {
  return `${spanEstimate(span)} of the ${spanEstimate({ ...total, low: null, high: null })} to the end of work`;
}

const BARE = { key: "", label: "", unit: "s", better: null } as const;

/**
 * "5.06 h (4.71 to 5.41 h)": a mean span of time, 0 or longer, with its interval, in the unit that suits its largest end;
 * the mean alone for a single day. Seconds.
 */
export function spanEstimate({ mean, low, high, halfWidth }: Estimate): string {
  const { value, range } = responseFormat({ ...BARE, format: "duration" }, 0, {
    value: Math.max(mean, high ?? mean),
    difference: 0,
  });
  if (low === null || high === null) return value(mean, null);
  return `${value(mean, halfWidth)} (${range(Math.max(0, low), high, halfWidth)})`;
}

/** "54 % (50 to 58 %)": the same for a share; no end of an interval lies beyond 0 or 1. */
export function shareEstimate({ mean, low, high, halfWidth }: Estimate): string {
  const { value, range } = responseFormat({ ...BARE, format: "share" }, 0);
  if (low === null || high === null) return value(mean, null);
  return `${value(mean, halfWidth)} (${range(Math.max(0, low), Math.min(1, high), halfWidth)})`;
}

/** An estimate times a number; a negative one turns its interval round. */
export function timesEstimate(estimate: Estimate, by: number): Estimate {
  const times = (value: number | null) => (value === null ? null : value * by);
  const [low, high] = by < 0 ? [estimate.high, estimate.low] : [estimate.low, estimate.high];
  const halfWidth = estimate.halfWidth === null ? null : Math.abs(estimate.halfWidth * by);
  return {
    ...estimate,
    mean: estimate.mean * by,
    sd: estimate.sd * Math.abs(by),
    halfWidth,
    low: times(low),
    high: times(high),
  };
}
