import type { Difference } from "../contract.ts";
import { confidenceWords } from "./confidenceWords.ts";
import { differenceEnds } from "./differenceEnds.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/** A difference to the base, told in the same words wherever it appears. */
export interface DifferenceWords {
  /** "+36.3 heads/h" */
  mean: string;
  /** "+35.0 to +37.5"; "" where there is no interval. */
  interval: string;
  /** "shown" or "not shown"; "one day, no interval" where n < 2. */
  verdict: string;
  /** "36.3 heads/h more than the base case (+35.0 to +37.5 at 95 %)" or "not distinguishable from the base case at 95 % (...)". */
  sentence: string;
}

export function differenceWords(
  difference: Difference | undefined,
  format: ResponseFormat,
  confidence: number,
): DifferenceWords {
  if (!difference || difference.n === 0) {
    return {
      mean: "no value",
      interval: "",
      verdict: "not known",
      sentence: "cannot be compared with the base case: no replication gave both values",
    };
  }
  const { mean } = difference;
  const { halfWidth, low, high } = differenceEnds(difference);
  if (low === null || high === null) {
    const text = format.difference(mean, null);
    return {
      mean: text,
      interval: "",
      verdict: "one day, no interval",
      sentence: `${format.comparison(mean, null)} than the base case on one day; one day has no interval and shows nothing`,
    };
  }
  const interval = format.differenceRange(low, high, halfWidth);
  if (low === 0 && high === 0) {
    return {
      mean: "0",
      interval: "",
      verdict: "the same",
      sentence: `the same as the base case in all ${difference.n} replications`,
    };
  }
  const at = confidenceWords(confidence);
  const sentence = difference.shown
    ? `${format.comparison(mean, halfWidth)} than the base case (${interval} at ${at}${reason(difference, low, high)})`
    : `not distinguishable from the base case at ${at} (${interval}${reason(difference, low, high)})`;
  return {
    mean: format.difference(mean, halfWidth),
    interval,
    verdict: difference.shown ? "shown" : "not shown",
    sentence,
  };
}

/** What else the verdict rests on: how many comparisons, and the test where the interval alone would say otherwise. */
function reason({ joint, shown, comparisons }: Difference, low: number, high: number): string {
  const among = joint ? ` for all ${comparisons} comparisons at once` : "";
  if (shown === (low > 0 || high < 0)) return among;
  return shown ? `${among}; Holm's test shows it` : `${among}; not enough among ${comparisons} comparisons`;
}
