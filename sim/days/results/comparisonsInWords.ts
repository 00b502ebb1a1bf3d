import type { ResponseInfo } from "../../day/observations/index.ts";
import { type Comparison, type ComparisonOptions, compareAll, type Scale } from "../../maths/statistics/index.ts";
import { differenceWords } from "./differenceWords.ts";

/** `noun`: what is compared; days where it is left out. */
type ComparisonWordsOptions = Omit<ComparisonOptions, "scale"> & { noun?: string | undefined };

/** A difference to the base as one of a family, with one sentence that says it by the interval its verdict goes by. */
export interface ComparisonInWords extends Comparison {
  words: string;
}

/** Every variant against the base for one response, as `compareAll` finds it, each with its sentence. */
export function comparisonsInWords(
  values: readonly (readonly (number | null)[])[],
  base: number,
  options: ComparisonWordsOptions,
  info: ResponseInfo,
): (ComparisonInWords | null)[] {
  return compareAll(values, base, { ...options, scale: scaleOf(info) }).map((found) => {
    return found === null ? null : { ...found, words: comparisonWords(found, options, info) };
  });
}

/** A time of day has no natural zero. */
export function scaleOf({ format }: Pick<ResponseInfo, "format">): Scale {
  return format === "clock" ? "interval" : "ratio";
}

/**
 * The sentence that says a difference to today's plan as one of several: size and direction or that none is shown, with the
 * interval that the verdict goes by and what it allows for.
 */
export function comparisonWords(
  comparison: Comparison,
  { confidence, errorRate, noun }: ComparisonWordsOptions,
  info: ResponseInfo,
): string {
  const { n, mean, familyLow: low, familyHigh: high, comparisons } = comparison;
  if (comparisons < 2 || errorRate === "per comparison") return differenceWords(comparison, confidence, info, { noun });
  const allowing =
    errorRate === "family-wise"
      ? `, sure even though ${comparisons} changes were compared`
      : `, allowing for ${comparisons} changes compared`;
  return differenceWords({ n, mean, low, high }, confidence, info, { allowing, noun });
}
