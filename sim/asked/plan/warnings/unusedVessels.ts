import type { Fault } from "../fault.ts";
import { faultAt, locatedList } from "../rules/located.ts";
import { workplacesOf } from "../rules/stages.ts";

/** Vessels that nothing runs into. */
export function unusedVessels(json: unknown): Fault[] {
  const fed = workplacesOf(json).flatMap(({ at }) =>
    locatedList(json, ...at, "takesOff").map(({ value }) => value.vessel),
  );
  return locatedList(json, "vessels").flatMap(({ at, value }) =>
    fed.includes(value.name)
      ? []
      : [faultAt(at, `nothing runs into '${value.name}'`, "", `name it as the "vessel" of what a stage takes off`)],
  );
}
