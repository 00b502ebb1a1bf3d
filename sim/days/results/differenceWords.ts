import type { ResponseInfo } from "../../day/observations/index.ts";
import type { Estimate } from "../../maths/statistics/index.ts";
import { formatBound, formatConfidence, formatDifference } from "../../text/units/index.ts";

/**
 * The sentence that says a difference to today's plan (the base): direction, size, interval, confidence and number of days
 * compared, or that no difference is shown and how large it may be. Never a difference without its interval. `allowing`
 * says what else the interval allows for, and `noun` what was compared: days, or pairs of days.
 */
export function differenceWords(
  difference: Pick<Estimate, "n" | "mean" | "low" | "high">,
  confidence: number,
  info: ResponseInfo,
  { allowing = "", noun = "days" }: { allowing?: string; noun?: string | undefined } = {},
): string {
  const { n, mean, low, high } = difference;
  if (low === null || high === null) {
    return `Not enough simulated ${noun} to tell (${n} compared; at least 2 are needed).`;
  }
  if (low === 0 && high === 0) return `The same as today's plan on all ${n} ${noun}.`;
  const percent = formatConfidence(confidence);
  const evidence = `at ${percent}${allowing}; on the same ${n} ${noun}`;
  if (low <= 0 && high >= 0) {
    const half = (high - low) / 2;
    const most = Math.max(-low, high);
    return `No difference from today's plan shown (less than ${formatBound(most, half, info)} ${evidence}).`;
  }
  const [least, most] = low > 0 ? [low, high] : [-high, -low];
  const [size, range] = formatDifference({ mean: Math.abs(mean), low: least, high: most }, info, "plain");
  return `${size} ${directionWord(mean, info)} than today's plan (${range} ${evidence}).`;
}

/** "more" or "less"; of a time of day "later" or "earlier". */
export function directionWord(mean: number, info: ResponseInfo): string {
  if (info.format === "clock") return mean > 0 ? "later" : "earlier";
  return mean > 0 ? "more" : "less";
}
