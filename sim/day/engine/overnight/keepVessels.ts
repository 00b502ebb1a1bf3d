import { emptyingJob, requestJob } from "../jobs.ts";
import type { DayState } from "../state/dayState.ts";

/** What is in the vessels stays in them. What was asked for and not begun waits for the morning. */
export function keepVessels(before: DayState, day: DayState): void {
  for (const vessel of before.vesselAt) {
    const here = day.vesselAt[vessel.index]!;
    const isBeingEmptied = before.calendar.times[vessel.slot] !== Infinity;
    here.kg = vessel.kg - (isBeingEmptied ? vessel.takenKg : 0);
    here.mostKg = here.kg;
    if (here.kg >= here.capacityKg) here.fullSince = 0;
  }
}

/** Who empties is called in the morning. */
export function callEmptyings(day: DayState): void {
  for (const vessel of day.vesselAt) {
    if (vessel.kg < vessel.emptyAtKg || vessel.isToBeEmptied) continue;
    vessel.isToBeEmptied = true;
    requestJob(day, emptyingJob(day, vessel));
  }
}
