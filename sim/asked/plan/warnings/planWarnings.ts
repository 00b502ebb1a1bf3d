import { does } from "../../../text/kinds/index.ts";
import { formatClock, formatRate } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { pacedIn } from "../mapWork.ts";
import type { Pace, Plan } from "../plan.ts";
import { faultAt, locatedList } from "../rules/located.ts";
import { workplacesOf } from "../rules/stages.ts";
import { crewSize } from "./crewSize.ts";
import { dwellCapacity } from "./dwellCapacity.ts";
import { lastShift } from "./lastShift.ts";
import { presentationWarnings } from "./presentationWarnings.ts";
import { ringLocks } from "./ringLocks.ts";
import { unprotectedStunned } from "./unprotectedStunned.ts";

/**
 * More of the same kind: what is seen when heads flow by mean times. Apart, because it takes tens of milliseconds, too long
 * for a study that reads thousands of plans.
 */
export function flowWarnings(plan: Plan, json: unknown): Fault[] {
  return lastShift(plan, json);
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

/** Shared breakdowns that stop no more than one station: nothing is shared, and results then name no station for them. */
function sharedStops(plan: Plan, json: unknown): Fault[] {
  const chains = plan.line.filter((stage) => does(stage, "carry stations")).map(({ name }) => name);
  return locatedList(json, "sharedBreakdowns").flatMap(({ at }, index) => {
    const { stops } = plan.sharedBreakdowns[index]!;
    if (stops.length > 1 || chains.includes(stops[0]!)) return [];
    const remedy = `name what else it stops, or write it among the "breakdowns" of '${stops[0]}'`;
    return [faultAt([...at, "stops"], `it stops '${stops[0]}' alone`, "", remedy)];
  });
}

/** Vessels that nothing runs into. */
function unusedVessels(json: unknown): Fault[] {
  const fed = workplacesOf(json).flatMap(({ at }) =>
    locatedList(json, ...at, "takesOff").map(({ value }) => value.vessel),
  );
  return locatedList(json, "vessels").flatMap(({ at, value }) =>
    fed.includes(value.name)
      ? []
      : [faultAt(at, `nothing runs into '${value.name}'`, "", `name it as the "vessel" of what a stage takes off`)],
  );
}

/** Upper rates by the hour below the rate that the plan has for its target. */
function paceCaps(plan: Plan, json: unknown): Fault[] {
  const target = plan.targetHeadsPerSecond;
  if (target === null) return [];
  return workplacesOf(json).flatMap(({ at, value }) => {
    const written = locatedList(json, ...at, "pace");
    return pacesOf(plan, String(value.name)).flatMap(({ fromSeconds, mostPerSecond }, index) => {
      if (mostPerSecond === null || mostPerSecond >= target) return [];
      const from = formatClock(plan.day.startClockSeconds + fromSeconds);
      const found = `from ${from} on '${value.name}' lets through at most ${formatRate(mostPerSecond)}, less than the target of ${formatRate(target)}`;
      return [
        faultAt([...written[index]!.at, "atMost"], found, "", "if that is meant, the target is not for those hours"),
      ];
    });
  });
}

/** Heads that are sent aside only are few: what holds them up holds up no target. */
function pacesOf({ line }: Plan, name: string): Pace[] {
  const paced = line.filter(({ offLine }) => !offLine).flatMap(pacedIn);
  return paced.find((each) => each.name === name)?.pace ?? [];
}
