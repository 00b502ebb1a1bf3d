import type { DayRecord } from "../engine/index.ts";
import type { Plan } from "../plan/index.ts";
import { responseList } from "./responseList.ts";

/**
 * The value of every response of the plan on one day, keyed as in `responsesOf`. Seconds, heads, shares from 0 to 1.
 * Null means "not applicable on this day" (no head passed the limit, nobody was on duty ...); zero means zero.
 */
export function measure(day: DayRecord, plan: Plan): Record<string, number | null> {
  return Object.fromEntries(responseList(plan).map((response) => [response.key, response.of(day)]));
}
