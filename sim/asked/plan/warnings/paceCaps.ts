import { formatClock, formatRate } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import type { Pace, Plan } from "../plan.ts";
import { faultAt, locatedList } from "../rules/located.ts";
import { workplacesOf } from "../rules/stages.ts";

/** Upper rates by the hour below the rate that the plan has for its target. */
export function paceCaps(plan: Plan, json: unknown): Fault[] {
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
  for (const stage of line) {
    if (stage.kind === "dwell" || stage.offLine) continue;
    if (stage.name === name) return stage.pace;
    const station = stage.kind === "chain" ? stage.stations.find((each) => each.name === name) : undefined;
    if (station !== undefined) return station.pace;
  }
  return [];
}
