import type { SharedBreakdown } from "../../sim/asked/plan/plan.ts";
import { constant } from "./plans.ts";

/** Something that stops all of these after so many seconds in which any of them worked, for so many. */
export function shared(
  stops: string[],
  uptime: number,
  repair: number,
  changes: Partial<SharedBreakdown> = {},
): SharedBreakdown {
  return {
    name: "board",
    stops,
    clock: "any running",
    uptimeSeconds: constant(uptime),
    repairSeconds: constant(repair),
    crew: null,
    ...changes,
  };
}
