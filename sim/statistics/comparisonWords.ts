import { formatRange, formatSpan, type ResponseInfo } from "../observations/index.ts";
import type { Comparison, ComparisonOptions } from "./compareAll.ts";
import { differenceWords, directionWord } from "./differenceWords.ts";
import { formatP } from "./formatP.ts";

/**
 * The sentence that says a difference to the base case as one of several: size and direction or that none can be told,
 * with the interval and adjusted p-value that go with the error rate, and the number of paired replications.
 */
export function comparisonWords(
  comparison: Comparison,
  { confidence, errorRate }: ComparisonOptions,
  info: ResponseInfo,
): string {
  const { n, mean, low, high, familyLow, familyHigh, comparisons, shown } = comparison;
  const alone = comparisons < 2 || errorRate === "per comparison";
  const noSpread = low === high;
  if (alone || noSpread || familyLow === null || familyHigh === null || low === null || high === null)
    return differenceWords(comparison, confidence, info);
  const percent = `${Number((confidence * 100).toFixed(2))} %`;
  const range = (from: number, to: number): string => formatRange(formatSpan(from, info), formatSpan(to, info));
  const all = `all ${comparisons} comparisons`;
  const evidence =
    errorRate === "family-wise"
      ? `${percent} interval for ${all} at once ${range(familyLow, familyHigh)}, Holm-adjusted ${formatP(comparison.holmP!)}`
      : `${percent} interval by itself ${range(low, high)}, ${formatP(comparison.benjaminiHochbergP!)} adjusted for false discoveries among ${all}`;
  const details = `${evidence}, ${n} paired replications`;
  if (!shown) return `Not distinguishable from the base case at ${percent} among ${all} (${details}).`;
  const wide = errorRate === "family-wise" && familyLow <= 0 && familyHigh >= 0;
  const caveat = wide ? " The test tells the difference; the interval for all at once is wider than it needs." : "";
  return `${formatSpan(Math.abs(mean), info, "plain")} ${directionWord(mean, info)} than the base case (${details}).${caveat}`;
}
