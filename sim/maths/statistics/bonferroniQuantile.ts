import { studentQuantile } from "./studentQuantile.ts";

/**
 * The t quantile with which `comparisons` two-sided intervals hold all at once with at least the given confidence,
 * whatever they have in common (Bonferroni's inequality; Dunn 1961, Journal of the American Statistical Association 56).
 *
 * `comparisons` 1 or more, else a RangeError; not whole where a level is shared among several (see `compareAll`).
 *
 * @example bonferroniQuantile(4, 0.95, 9) // 3.110935
 */
export function bonferroniQuantile(comparisons: number, confidence: number, df: number): number {
  if (!(comparisons >= 1)) throw new RangeError(`bonferroniQuantile: ${comparisons} comparisons; at least 1 is needed`);
  return studentQuantile(1 - (1 - confidence) / (2 * comparisons), df);
}
