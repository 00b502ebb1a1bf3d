import type { Breakdown } from "../../sim/asked/plan/plan.ts";
import { constant } from "./plans.ts";

/** Something that breaks after so many seconds of its position's work and is repaired, by nobody in particular, in so many. */
export function breakdown(uptime: number, repair: number, changes: Partial<Breakdown> = {}): Breakdown {
  return {
    name: "jam",
    clock: "running",
    scope: "position",
    uptimeSeconds: constant(uptime),
    repairSeconds: constant(repair),
    crew: null,
    headInHand: "resume",
    ...changes,
  };
}
