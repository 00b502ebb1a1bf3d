import type { Estimate } from "../contract.ts";
import { responseFormat } from "./responseFormat.ts";

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
