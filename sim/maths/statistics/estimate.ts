import { RunningMoments } from "./runningMoments.ts";
import { studentQuantile } from "./studentQuantile.ts";

/** Mean over `n` replications with its two-sided Student-t interval; halfWidth null when n < 2. */
export interface Estimate {
  n: number;
  mean: number;
  /**
   * Sample standard deviation (divisor n - 1); 0 when n is 1, where `halfWidth` null says that nothing is known of it.
   */
  sd: number;
  halfWidth: number | null;
  low: number | null;
  high: number | null;
  min: number;
  max: number;
}

/**
 * Mean of independent replications with its two-sided Student-t interval ("Student" 1908, Biometrika 6).
 *
 * `values`: one per replication, in the response's own unit; null where a replication has no such value. They are left
 * out and `n` says how many remain. `confidence` between 0 and 1 (0.95 for 95 %).
 *
 * Three different answers: null ("not applicable": no replication has a value), `halfWidth` null ("not enough data":
 * one value) and a mean of 0. Assumes independent replications and means that are close to normal.
 *
 * @example estimate([612, 598, 605], 0.95) // n 3, mean 605, halfWidth 17.4
 */
export function estimate(values: readonly (number | null)[], confidence: number): Estimate | null {
  if (!(confidence > 0 && confidence < 1)) {
    throw new RangeError(`estimate: confidence is ${confidence}; it must lie between 0 and 1`);
  }
  const moments = new RunningMoments();
  for (const value of values) if (value !== null) moments.add(value);
  const { n, mean, sd, min, max } = moments;
  if (mean === null) return null;
  if (sd === null) return { n, mean, sd: 0, halfWidth: null, low: null, high: null, min, max };
  const halfWidth = (studentQuantile((1 + confidence) / 2, n - 1) * sd) / Math.sqrt(n);
  return { n, mean, sd, halfWidth, low: mean - halfWidth, high: mean + halfWidth, min, max };
}
