import { requestJob } from "./jobs.ts";
import type { DayState } from "./state/dayState.ts";

/** By-product runs into the vessel: at its mark somebody is called to empty it; when it is full it stops its stages or spills. */
export function fillVessel(day: DayState, vessel: number, kilograms: number): void {
  const { capacityKg, emptyAtKg, stops } = day.vessels;
  let level = day.vesselKg[vessel]! + kilograms;
  if (level > capacityKg[vessel]! && !stops[vessel]) {
    day.vesselSpilled[vessel]! += level - capacityKg[vessel]!;
    level = capacityKg[vessel]!;
  }
  day.vesselKg[vessel] = level;
  if (level > day.vesselMax[vessel]!) day.vesselMax[vessel] = level;
  if (level >= capacityKg[vessel]! && Number.isNaN(day.vesselFullSince[vessel]!)) day.vesselFullSince[vessel] = day.now;
  if (level >= emptyAtKg[vessel]! && !day.vesselBusy[vessel]) callEmptying(day, vessel);
}

/** What was in the vessel when the emptying began is gone; what ran in since then stays. */
export function emptyVessel(day: DayState, vessel: number): void {
  day.calendar.schedule(day.vessels.slot[vessel]!, Infinity);
  day.vesselKg[vessel]! -= day.vesselTaken[vessel]!;
  day.vesselBusy[vessel] = 0;
  day.vesselEmptied[vessel]!++;
  const { capacityKg, emptyAtKg } = day.vessels;
  if (!Number.isNaN(day.vesselFullSince[vessel]!) && day.vesselKg[vessel]! < capacityKg[vessel]!) {
    day.vesselFullSeconds[vessel]! += day.now - day.vesselFullSince[vessel]!;
    day.vesselFullSince[vessel] = Number.NaN;
  }
  if (day.vesselKg[vessel]! >= emptyAtKg[vessel]!) callEmptying(day, vessel);
}

function callEmptying(day: DayState, vessel: number): void {
  day.vesselBusy[vessel] = 1;
  requestJob(day, day.failures.count + vessel);
}
