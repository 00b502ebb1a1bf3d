import { formatRange, formatSpan, type ResponseInfo } from "../observations/index.ts";
import type { Estimate } from "./estimate.ts";

/**
 * The sentence that says a difference to the base case: direction, size, interval, confidence and number of paired
 * replications, or that no difference can be told. Never a difference without its interval.
 */
export function differenceWords(difference: Estimate, confidence: number, info: ResponseInfo): string {
  const { n, mean, low, high } = difference;
  if (low === null || high === null) {
    return `Not enough replications to tell (${n} paired; at least 2 are needed).`;
  }
  const percent = `${Number((confidence * 100).toFixed(2))} %`;
  if (low === 0 && high === 0) return `The same as the base case in all ${n} replications.`;
  const interval = `${percent} interval ${formatRange(formatSpan(low, info), formatSpan(high, info))}, ${n} paired replications`;
  if (low <= 0 && high >= 0) return `Not distinguishable from the base case at ${percent} (${interval}).`;
  return `${formatSpan(Math.abs(mean), info, "plain")} ${directionWord(mean, info)} than the base case (${interval}).`;
}

/** "more" or "less"; of a time of day "later" or "earlier". */
export function directionWord(mean: number, info: ResponseInfo): string {
  if (info.format === "clock") return mean > 0 ? "later" : "earlier";
  return mean > 0 ? "more" : "less";
}
