import type { ResponseInfo } from "../../day/observations/index.ts";
import { formatDifference, formatDuration, formatSpan } from "../../text/units/index.ts";

/** "78 min (70 to 86 min)", "12 carcasses/h (9 to 15 carcasses/h)": a size with its interval, no finer than the interval is wide. */
export function spreadWords(mean: number, low: number, high: number, response: ResponseInfo): string {
  if (low === high) return formatSpan(mean, response, "plain");
  const [size, range] = formatDifference({ mean, low, high }, response, "plain");
  return `${size} (${range})`;
}

/** "1 min", "20 s", "2 carcasses/h": a round number. */
export function sizeWords(size: number, response: ResponseInfo): string {
  const isTime = response.format === "clock" || response.format === "duration";
  return isTime ? formatDuration(size) : formatSpan(size, response, "plain");
}
