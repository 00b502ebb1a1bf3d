import type { Estimate } from "./estimate.ts";

/**
 * An estimate cut off at 0, and at `most` where there is one: what lies beyond is no possible value of the mean, so the
 * interval covers as often as before. `halfWidth` becomes half of what is left.
 */
export function cutOff(found: Estimate, most = Number.POSITIVE_INFINITY): Estimate {
  const { mean, low, high } = found;
  if (low === null || high === null) return found;
  const within = (end: number) => Math.min(most, Math.max(0, end));
  if (low === within(low) && high === within(high)) return found;
  return {
    ...found,
    mean: within(mean),
    low: within(low),
    high: within(high),
    halfWidth: (within(high) - within(low)) / 2,
  };
}
