import type { Crew, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { cleaningEndSeconds } from "./workingTime.ts";

/** Person-seconds of one crew that are paid: inside the shifts, and beyond the end of the last one. */
export interface PaidTime {
  regularSeconds: number;
  overtimeSeconds: number;
}

/**
 * Who was there is paid from the start to the end of each shift, breaks included and however early work ended. The last
 * shift's people stay until the last work is done, those who clean until it is clean. Who is absent is not paid here.
 * Nobody stays for carcasses that only chill.
 */
export function paidTime(crew: Crew, day: DayRecord, plan: Plan): PaidTime {
  const people = day.crews.find(({ name }) => name === crew.name)?.people ?? [];
  const regularSeconds = plan.day.shifts.reduce(
    (sum, { fromSeconds, toSeconds }, shift) => sum + (people[shift] ?? 0) * (toSeconds - fromSeconds),
    0,
  );
  const leaves = cleans(crew, plan) ? (cleaningEndSeconds(day, plan) ?? day.workFinishSeconds) : day.workFinishSeconds;
  const last = people[plan.day.shifts.length - 1] ?? 0;
  return { regularSeconds, overtimeSeconds: last * Math.max(0, leaves - day.shiftEndSeconds) };
}

function cleans(crew: Crew, plan: Plan): boolean {
  return plan.day.cleaning?.crews.includes(crew.name) ?? false;
}
