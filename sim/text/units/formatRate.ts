import { formatNumber } from "./formatNumber.ts";

/** Heads (or anything counted) per second as a rate per hour: "620 /h". Three significant digits at least. */
export function formatRate(perSecond: number): string {
  return `${formatNumber(perSecond * 3600)} /h`;
}
