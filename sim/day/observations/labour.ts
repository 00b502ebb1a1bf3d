import type { Crew, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { cleaningEndSeconds, sectionsCleanSeconds } from "./workingTime.ts";

/** Person-seconds of one crew that are paid: inside the shifts, and beyond the end of the last one. */
export interface PaidTime {
  regularSeconds: number;
  overtimeSeconds: number;
}

/**
 * Who was there is paid from the start to the end of each shift, breaks included and however early work ended. The last
 * shift's people stay until the last work is done (their own, where the plan says that they leave by it), those who clean until it is clean. Who is absent is not paid here.
 * Nobody stays for carcasses that only chill.
 */
export function paidTime(crew: Crew, day: DayRecord, plan: Plan): PaidTime {
  const people = day.crews.find(({ name }) => name === crew.name)?.people ?? [];
  const regularSeconds = plan.day.shifts.reduce(
    (sum, { fromSeconds, toSeconds }, shift) => sum + (people[shift] ?? 0) * (toSeconds - fromSeconds),
    0,
  );
  const last = crew.leavesOnItsOwn ? people.findLastIndex((there) => there > 0) : plan.day.shifts.length - 1;
  const ends = plan.day.shifts[last]?.toSeconds ?? day.shiftEndSeconds;
  return { regularSeconds, overtimeSeconds: (people[last] ?? 0) * Math.max(0, leaves(crew, day, plan) - ends) };
}

/** When the crew goes home after its last shift: with the day's last work or its own, and the cleaning behind it where it cleans. */
function leaves(crew: Crew, day: DayRecord, plan: Plan): number {
  if (!crew.leavesOnItsOwn)
    return cleans(crew, plan) ? (cleaningEndSeconds(day, plan) ?? day.workFinishSeconds) : day.workFinishSeconds;
  const own = day.crews.find(({ name }) => name === crew.name)?.lastWorkSeconds ?? 0;
  if (own === 0 || !cleans(crew, plan)) return own;
  return Math.max(own + plan.day.cleaning!.seconds, sectionsCleanSeconds(day));
}

function cleans(crew: Crew, plan: Plan): boolean {
  return plan.day.cleaning?.crews.includes(crew.name) ?? false;
}
