import { compensatedSum } from "./compensatedSum.ts";
import { studentQuantile } from "./studentQuantile.ts";

/** Variances between worlds and of days within one. */
export interface TwoStageVariance {
  between: number;
  within: number;
}

/**
 * Days of a world that tell the mean over all worlds at least cost: the root of (cost of a world / cost of a day) x (within /
 * between), of the whole numbers beside it the cheaper one (optimum of two-stage sampling: Cochran 1977, Sampling Techniques,
 * section 10.6; from memory). `worldCost`: what a world costs besides its days, in days. From 1 to `most`, which is what it
 * comes to where worlds do not differ; 1 where days do not.
 */
export function daysPerWorld({ between, within }: TwoStageVariance, worldCost: number, most: number): number {
  if (within === 0) return 1;
  if (between === 0) return most;
  const best = Math.sqrt((worldCost * within) / between);
  const low = Math.min(most, Math.max(1, Math.floor(best)));
  const cost = (days: number) => (worldCost + days) * (between + within / days);
  return low < most && cost(low + 1) < cost(low) ? low + 1 : low;
}

/**
 * Half-width of the interval of the mean of all days: Student t with worlds less one degrees of freedom. `days`: of each
 * world, two worlds or more. As if worlds were drawn independently; a Latin hypercube does no worse (Stein 1987).
 */
export function halfWidthOfWorlds(
  days: readonly number[],
  { between, within }: TwoStageVariance,
  confidence: number,
): number {
  const all = compensatedSum(days);
  const squares = compensatedSum(days.map((count) => count * count));
  const variance = (between * squares) / (all * all) + within / all;
  return studentQuantile((1 + confidence) / 2, days.length - 1) * Math.sqrt(variance);
}

/**
 * The fewest further worlds, of so many days each, with which that half-width is at most `wanted`; null where more than
 * `most` would not do. 0 where it is so already.
 */
export function furtherWorlds(
  days: readonly number[],
  each: number,
  variance: TwoStageVariance,
  { wanted, confidence, most }: { wanted: number; confidence: number; most: number },
): number | null {
  const isEnough = (more: number) =>
    halfWidthOfWorlds([...days, ...new Array<number>(more).fill(each)], variance, confidence) <= wanted;
  if (isEnough(0)) return 0;
  if (!isEnough(most)) return null;
  let [low, high] = [0, most];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
