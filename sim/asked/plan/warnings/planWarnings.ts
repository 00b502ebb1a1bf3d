import type { Fault } from "../fault.ts";
import type { Plan } from "../plan.ts";
import { crewSize } from "./crewSize.ts";
import { dwellCapacity } from "./dwellCapacity.ts";
import { lastShift } from "./lastShift.ts";
import { paceCaps } from "./paceCaps.ts";
import { presentationWarnings } from "./presentationWarnings.ts";
import { ringLocks } from "./ringLocks.ts";
import { sharedStops } from "./sharedStops.ts";
import { stopWarnings } from "./stopWarnings.ts";
import { unprotectedStunned } from "./unprotectedStunned.ts";
import { unusedVessels } from "./unusedVessels.ts";

/**
 * More of the same kind: what is seen when heads flow by mean times. Apart, because it takes tens of milliseconds, too long
 * for a study that reads thousands of plans.
 */
export function flowWarnings(plan: Plan, json: unknown): Fault[] {
  return [...lastShift(plan, json), ...stopWarnings(plan)];
}

/** What runs but is probably not meant, in a sound plan and the file it was made from. */
export function planWarnings(plan: Plan, json: unknown): Fault[] {
  return [
    ...dwellCapacity(plan, json),
    ...ringLocks(json),
    ...unusedVessels(json),
    ...unprotectedStunned(json),
    ...crewSize(plan, json),
    ...sharedStops(plan, json),
    ...paceCaps(plan, json),
    ...presentationWarnings(plan, json),
  ];
}
