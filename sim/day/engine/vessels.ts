import { emptyingJob, requestJob } from "./jobs.ts";
import type { DayState } from "./state/dayState.ts";
import type { VesselState } from "./state/vesselState.ts";

/** By-product runs into the vessel: at its mark somebody is called to empty it; when it is full it stops its stages or spills. */
export function fillVessel(day: DayState, vessel: VesselState, kilograms: number): void {
  const { capacityKg, emptyAtKg } = vessel;
  let level = vessel.kg + kilograms;
  if (level > capacityKg && !vessel.stopsFeeders) {
    vessel.spilledKg += level - capacityKg;
    level = capacityKg;
  }
  vessel.kg = level;
  if (level > vessel.mostKg) vessel.mostKg = level;
  if (level >= capacityKg && !vessel.isFull) vessel.fullSince = day.now;
  if (level >= emptyAtKg && !vessel.isToBeEmptied) callEmptying(day, vessel);
}

/** What was in the vessel when the emptying began is gone; what ran in since then stays. */
export function emptyVessel(day: DayState, vessel: VesselState): void {
  day.calendar.schedule(vessel.slot, Infinity);
  vessel.kg -= vessel.takenKg;
  vessel.isToBeEmptied = false;
  vessel.emptied++;
  if (vessel.isFull && vessel.kg < vessel.capacityKg) {
    vessel.fullSeconds += day.now - vessel.fullSince;
    vessel.fullSince = Number.NaN;
  }
  if (vessel.kg >= vessel.emptyAtKg) callEmptying(day, vessel);
}

function callEmptying(day: DayState, vessel: VesselState): void {
  vessel.isToBeEmptied = true;
  requestJob(day, emptyingJob(day, vessel));
}
