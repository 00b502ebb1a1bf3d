import { studentQuantile } from "./studentQuantile.ts";

/**
 * How many replications, pilot included, give a two-sided interval of at most the wanted half-width: the first stage of
 * Stein 1945 (Annals of Mathematical Statistics 16), max(n0, ceil((t sd / halfWidth)^2)).
 *
 * `sd` and `n0` come from the pilot (n0 >= 2); `halfWidth` > 0 in the same unit as `sd`.
 *
 * @example replicationsNeeded(3, 10.0995, 10, 0.95) // 58
 */
export function replicationsNeeded(halfWidth: number, sd: number, n0: number, confidence: number): number {
  if (!(halfWidth > 0)) throw new RangeError(`replicationsNeeded: half-width is ${halfWidth}; it must be above 0`);
  if (!(n0 >= 2)) throw new RangeError(`replicationsNeeded: a pilot of ${n0}; at least 2 replications are needed`);
  const t = studentQuantile((1 + confidence) / 2, n0 - 1);
  return Math.max(n0, Math.ceil(((t * sd) / halfWidth) ** 2));
}
