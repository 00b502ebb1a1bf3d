import type { Plan, WeekDay } from "../../../asked/plan/index.ts";
import type { DayRecord, DaysRecord } from "../../engine/index.ts";
import type { ResponseInfo } from "../responseInfo.ts";

/** The values of responses on the days of a simulated week that count; null behind a day that did not end. */
export type DayValues = (key: string) => (number | null)[];

/** A response of a week: what it is, and how it is read off the week. */
export interface WeekResponse extends ResponseInfo {
  /** Responses of single days that it is made from. */
  needs: readonly string[];
  of(days: DayValues, record: DaysRecord): number | null;
}

/** Days that work is done on and that are counted, in their order. */
export function countedDays(plan: Plan): (WeekDay & { plan: Plan })[] {
  const { days, warmUpDays } = plan.week!;
  return days.slice(warmUpDays).filter((day): day is WeekDay & { plan: Plan } => day.plan !== null);
}

/** The records of those days, as far as the week was simulated. */
export function countedRecords(plan: Plan, { days }: DaysRecord): DayRecord[] {
  const { days: all, warmUpDays } = plan.week!;
  return days.slice(all.slice(0, warmUpDays).filter((day) => day.plan !== null).length);
}
