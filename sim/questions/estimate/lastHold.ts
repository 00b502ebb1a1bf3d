import type { Dwell, Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import { dwellSeconds } from "./dwellSeconds.ts";
import type { Hold } from "./serialLine.ts";

/**
 * The narrowest of the dwells behind the last station, the chiller above all, for heads that come at this rate; null where
 * there is none with a limit. It holds nothing up until it is full.
 */
export function lastHold(plan: Plan, headsPerSecond: number): Hold | null {
  const holds = behindLast(plan)
    .filter(({ places }) => places < Number.POSITIVE_INFINITY)
    .map((dwell) => ({ name: dwell.name, places: dwell.places, seconds: dwellSeconds(dwell, plan, headsPerSecond) }));
  return holds.toSorted((a, b) => a.places / a.seconds - b.places / b.seconds)[0] ?? null;
}

/** Names of the dwells behind the last station. */
export function lastDwells(plan: Plan): string[] {
  return behindLast(plan).map(({ name }) => name);
}

function behindLast(plan: Plan): Dwell[] {
  const main = plan.line.filter(({ offLine }) => !offLine);
  return main
    .slice(main.findLastIndex((stage) => !does(stage, "hold heads")) + 1)
    .filter((stage) => does(stage, "hold heads"));
}
