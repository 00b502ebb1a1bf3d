import type { Plan } from "../../asked/plan/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";

const SHARE = 0.002;
/** Spans of time that people name. */
const SPANS = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600];

/**
 * A gain up to which nobody would change a plant: about 0.2 % of the day (of the heads, of the throughput), as a round number of the
 * response's unit. `mean`: the plan's own; for an end of work in seconds after the day's start.
 */
export function littleWorth(plan: Plan, response: ResponseInfo, mean: number): number {
  const share = SHARE * Math.max(0, mean - startOf(plan, response));
  if (response.format === "clock") return SPANS.findLast((span) => span <= Math.max(1, share * 1.1))!;
  const size = 10 ** Math.floor(Math.log10(Math.max(share, 0.1)));
  return [5, 2, 1].find((step) => step * size <= share)! * size || size;
}

/** Seconds after the day's start from which an end of work is counted; 0 for what is no time of day. */
export function startOf({ day }: Plan, { format }: ResponseInfo): number {
  return format === "clock" ? (day.shifts[0]?.fromSeconds ?? 0) : 0;
}
