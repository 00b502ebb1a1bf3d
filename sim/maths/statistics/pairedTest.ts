import type { Estimate } from "./estimate.ts";
import { studentTwoSidedP } from "./studentTwoSidedP.ts";

/** A two-sided t test of "the mean is 0". */
export interface TTest {
  t: number;
  df: number;
  p: number;
}

/**
 * The paired t test of an estimated mean difference ("Student" 1908, Biometrika 6). Null with fewer than two pairs ("not
 * enough data"). Differences that are all the same leave no spread to measure by: p is then 1 when they are 0, else 0.
 */
export function pairedTest({ n, mean, sd }: Pick<Estimate, "n" | "mean" | "sd">): TTest | null {
  if (n < 2) return null;
  const df = n - 1;
  const t = mean === 0 ? 0 : mean / (sd / Math.sqrt(n));
  return { t, df, p: studentTwoSidedP(t, df) };
}
