import { RunningMoments } from "./runningMoments.ts";
import { studentQuantile } from "./studentQuantile.ts";
import { studentTwoSidedP } from "./studentTwoSidedP.ts";

/** A difference of two means from independent samples, with its interval and test. */
export interface IndependentDifference {
  mean: number;
  low: number;
  high: number;
  t: number;
  /** By the Welch-Satterthwaite formula; not whole. */
  df: number;
  p: number;
}

/**
 * Mean of `values` minus mean of `others` for samples that share no random numbers, spreads not taken as equal (Welch
 * 1947, Biometrika 34). Nulls are left out. Null when either sample has fewer than two values ("not enough data").
 * Under common random numbers use `pairedDifference`, which is narrower. When neither sample varies the interval has no
 * width, and df is that of the larger sample.
 */
export function welchDifference(
  values: readonly (number | null)[],
  others: readonly (number | null)[],
  confidence: number,
): IndependentDifference | null {
  const one = momentsOf(values);
  const two = momentsOf(others);
  if (one === null || two === null) return null;
  const mean = one.mean - two.mean;
  const square = one.square + two.square;
  const df =
    square === 0
      ? Math.max(one.n, two.n) - 1
      : square ** 2 / (one.square ** 2 / (one.n - 1) + two.square ** 2 / (two.n - 1));
  const halfWidth = studentQuantile((1 + confidence) / 2, df) * Math.sqrt(square);
  const t = mean === 0 ? 0 : mean / Math.sqrt(square);
  return { mean, low: mean - halfWidth, high: mean + halfWidth, t, df, p: studentTwoSidedP(t, df) };
}

/** `square`: of the standard error. */
function momentsOf(values: readonly (number | null)[]): { n: number; mean: number; square: number } | null {
  const moments = new RunningMoments();
  for (const value of values) if (value !== null) moments.add(value);
  const { n, mean, sd } = moments;
  return mean === null || sd === null ? null : { n, mean, square: sd ** 2 / n };
}
