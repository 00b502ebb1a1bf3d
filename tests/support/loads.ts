import type { CrateStep, LiveHandling, Load } from "../../sim/asked/plan/plan.ts";
import { constant } from "./plans.ts";

/** A lorry of heads that weigh 2.5 kg each, always on time. */
export function load(
  name: string,
  atSeconds: number,
  crates: number,
  headsPerCrate: number,
  changes: Partial<Load> = {},
): Load {
  return {
    name,
    atSeconds,
    delay: null,
    comesShare: 1,
    crates,
    headsPerCrate,
    deadOnArrivalShare: 0,
    liveWeightKg: constant(2.5),
    ...changes,
  };
}

/** The way of the crates, one at a time at the hanging point, crates without number. */
export function handling(
  toHanging: CrateStep[],
  back: CrateStep[] = [],
  changes: Partial<LiveHandling> = {},
): LiveHandling {
  return { way: "lift", toHanging, back, cratesAtHanging: 1, fleet: null, ...changes };
}
