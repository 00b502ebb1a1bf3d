import type { Plan } from "../../../asked/plan/index.ts";
import type { DaysRecord } from "../../engine/index.ts";
import { measurer } from "../measure.ts";
import { countedDays, countedRecords } from "./weekResponse.ts";
import { weekResponses } from "./weekResponses.ts";

/**
 * Reads the responses with these keys off any number of simulated weeks of one plan, in the order of `keys`; null where the
 * plan's week has no such response.
 */
export function weekMeasurer(plan: Plan, keys: readonly string[]): (record: DaysRecord) => (number | null)[] {
  const byKey = new Map(weekResponses(plan).map((response) => [response.key, response]));
  const wanted = keys.map((key) => byKey.get(key));
  const needed = [...new Set(wanted.flatMap((response) => response?.needs ?? []))];
  const rowOf = new Map(needed.map((key, row) => [key, row]));
  const isClock = new Set([...byKey.values()].filter(({ format }) => format === "clock").map(({ key }) => key));
  const days = countedDays(plan);
  const measurers = days.map((day) => measurer(day.plan, needed));
  // An hour counts from the start of the plan's usual day, whenever the day's own clock starts.
  const later = days.map((day) => day.plan.day.startClockSeconds - plan.day.startClockSeconds);
  return (record) => {
    const counted = countedRecords(plan, record);
    const values = measurers.map((of, row) => {
      const day = counted[row];
      return day === undefined ? null : of(day);
    });
    const ofDays = (key: string) =>
      values.map((row, day) => {
        const value = row?.[rowOf.get(key)!] ?? null;
        return value !== null && isClock.has(key) ? value + later[day]! : value;
      });
    return wanted.map((response) => response?.of(ofDays, record) ?? null);
  };
}
