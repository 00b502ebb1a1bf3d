import type { Fault } from "../fault.ts";
import type { Plan } from "../plan.ts";
import { dwellCapacity } from "./dwellCapacity.ts";
import { ringLocks } from "./ringLocks.ts";
import { unprotectedStunned } from "./unprotectedStunned.ts";
import { unusedVessels } from "./unusedVessels.ts";

/** What runs but is probably not meant, in a sound plan and the file it was made from. */
export function planWarnings(plan: Plan, json: unknown): Fault[] {
  return [...dwellCapacity(plan, json), ...ringLocks(json), ...unusedVessels(json), ...unprotectedStunned(json)];
}
