import type { ResponseInfo } from "../../day/observations/index.ts";
import type { MeanEstimate } from "../results/index.ts";

/** Ends of the day, to which people plan by the five minutes. */
export const ENDS = new Set(["finish", "overtime", "lastOut", "cleaningEnd"]);
const END_SECONDS = 300;
/** Of the heads: one in a thousand. */
const SHARE = 0.001;
/** Of today's value, for everything else. */
const PART = 0.01;

/**
 * The least difference that matters where the asker sets none, in the response's own unit: five minutes for an end of the
 * day, one head in a thousand for a share, and a hundredth of today's value otherwise (common practice, no source).
 */
export function usualMatters({ key, format }: ResponseInfo, today: Pick<MeanEstimate, "mean"> | undefined): number {
  if (ENDS.has(key) || format === "clock") return END_SECONDS;
  return format === "share" ? SHARE : PART * Math.abs(today?.mean ?? 0);
}

/** Of money a day: a two-hundredth of what the plant costs to run. */
export const MONEY_PART = 0.005;
