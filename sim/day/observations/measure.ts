import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { responseList } from "./responseList.ts";

/**
 * The value of every response of the plan on one day, keyed as in `responsesOf`. Seconds, heads, shares from 0 to 1.
 * Null means "not applicable on this day" (no head passed the limit, nobody was on duty ...); zero means zero.
 */
export function measure(day: DayRecord, plan: Plan): Record<string, number | null> {
  return Object.fromEntries(responseList(plan).map((response) => [response.key, response.of(day)]));
}

/**
 * Reads the responses with these keys off any number of days of one plan, in the order of `keys`. Null also where the plan
 * has no such response. What a plan can be measured by is worked out once: for a short day that takes as long as the day.
 */
export function measurer(plan: Plan, keys: readonly string[]): (day: DayRecord) => (number | null)[] {
  const byKey = new Map(responseList(plan).map((response) => [response.key, response]));
  const wanted = keys.map((key) => byKey.get(key));
  return (day) => wanted.map((response) => response?.of(day) ?? null);
}
