import type { Difference } from "../contract.ts";
import { confidenceWords } from "./confidenceWords.ts";
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
  const { mean, halfWidth, low, high } = difference;
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
  const at = confidenceWords(confidence);
  if (low === 0 && high === 0) {
    return {
      mean: "0",
      interval: "",
      verdict: "the same",
      sentence: `the same as the base case in all ${difference.n} replications`,
    };
  }
  const sentence = difference.shown
    ? `${format.comparison(mean, halfWidth)} than the base case (${interval} at ${at})`
    : `not distinguishable from the base case at ${at} (${interval})`;
  return {
    mean: format.difference(mean, halfWidth),
    interval,
    verdict: difference.shown ? "shown" : "not shown",
    sentence,
  };
}
