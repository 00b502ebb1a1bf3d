import { formatDecimals } from "./formatDecimals.ts";

/** "95 %" for 0.95; decimals only where the confidence has them. */
export function formatConfidence(confidence: number): string {
  const percent = Math.round(confidence * 1e4) / 100;
  return `${formatDecimals(percent, Number.isInteger(percent) ? 0 : Number.isInteger(percent * 10) ? 1 : 2)} %`;
}
