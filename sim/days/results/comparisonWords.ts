import type { ResponseInfo } from "../../day/observations/index.ts";
import type { Comparison, ComparisonOptions } from "../../maths/statistics/index.ts";
import { differenceWords } from "./differenceWords.ts";

/** `noun`: what is compared; days where it is left out. */
export type ComparisonWordsOptions = Omit<ComparisonOptions, "scale"> & { noun?: string | undefined };

/**
 * The sentence that says a difference to today's plan as one of several: size and direction or that none is shown, with the
 * interval that the verdict goes by and what it allows for.
 */
export function comparisonWords(
  comparison: Comparison,
  { confidence, errorRate, noun }: ComparisonWordsOptions,
  info: ResponseInfo,
): string {
  const { n, mean, familyLow: low, familyHigh: high, comparisons, shown } = comparison;
  if (comparisons < 2 || errorRate === "per comparison") return differenceWords(comparison, confidence, info, { noun });
  const allowing =
    shown && errorRate === "family-wise"
      ? `, sure even though ${comparisons} changes were compared`
      : `, allowing for ${comparisons} changes compared`;
  return differenceWords({ n, mean, low, high }, confidence, info, { allowing, noun });
}
