import type { Fault } from "../fault.ts";
import type { Plan } from "../plan.ts";
import { faultAt, locatedList } from "../rules/located.ts";

/** Shared breakdowns that stop no more than one station: nothing is shared, and results then name no station for them. */
export function sharedStops(plan: Plan, json: unknown): Fault[] {
  const chains = plan.line.filter(({ kind }) => kind === "chain").map(({ name }) => name);
  return locatedList(json, "sharedBreakdowns").flatMap(({ at }, index) => {
    const { stops } = plan.sharedBreakdowns[index]!;
    if (stops.length > 1 || chains.includes(stops[0]!)) return [];
    const remedy = `name what else it stops, or write it among the "breakdowns" of '${stops[0]}'`;
    return [faultAt([...at, "stops"], `it stops '${stops[0]}' alone`, "", remedy)];
  });
}
