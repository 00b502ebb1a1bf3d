import { RunningMoments } from "../../maths/statistics/index.ts";
import type { AskedLimit, ImproveQuestion } from "./question.ts";
import type { Trial } from "./trials.ts";

/** How good some days of a design were. */
export interface Score {
  /** By how much its shares lie above what the limits allow, all added; 0 where the limits are kept. */
  excess: number;
  /** Mean of the goal; null where a day has no value. */
  mean: number | null;
}

export function scoreOf({ values, responses }: Trial, { limits }: Pick<ImproveQuestion, "limits">): Score {
  const excess = limits.reduce((sum, limit) => {
    const beyond = meanOf(beyondLimit(limit, responses).filter((value) => value !== null));
    return sum + Math.max(0, (beyond ?? 0) - limit.share);
  }, 0);
  return { excess, mean: values.includes(null) ? null : meanOf(values as number[]) };
}

/** Of each day the share of heads outside the limit, or of orders that are late. */
export function beyondLimit({ key, of }: AskedLimit, responses: Trial["responses"]): (number | null)[] {
  const values = responses[key]!;
  return of === "heads" ? values : values.map((met) => (met === null ? null : 1 - met));
}

/**
 * Whether the first is the better one. Means of different days are not compared: what has fewer days had fallen behind
 * after them. Then by the limits, then by the goal, then by what it takes of the total.
 */
export function isBetter(one: Trial, other: Trial, question: ImproveQuestion): boolean {
  if (one.values.length !== other.values.length) return one.values.length > other.values.length;
  const [mine, theirs] = [scoreOf(one, question), scoreOf(other, question)];
  if (mine.excess !== theirs.excess) return mine.excess < theirs.excess;
  if (mine.mean === null || theirs.mean === null) return theirs.mean === null && mine.mean !== null;
  const gain = question.response.better === "less" ? theirs.mean - mine.mean : mine.mean - theirs.mean;
  if (gain !== 0) return gain > 0;
  return (one.design.spent ?? Number.POSITIVE_INFINITY) < (other.design.spent ?? Number.POSITIVE_INFINITY);
}

/** The best first; of equal ones the order stays. */
export function ranked(trials: readonly Trial[], question: ImproveQuestion): Trial[] {
  return trials.toSorted((a, b) => (isBetter(a, b, question) ? -1 : isBetter(b, a, question) ? 1 : 0));
}

export function meanOf(values: readonly number[]): number | null {
  const moments = new RunningMoments();
  for (const value of values) moments.add(value);
  return moments.mean;
}
