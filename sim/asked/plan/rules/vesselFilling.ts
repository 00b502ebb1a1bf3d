import { mass, readQuantity } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, locatedList } from "./located.ts";

/** Emptying is called for before the vessel is fuller than full. */
export function vesselFilling(json: unknown): Fault[] {
  return locatedList(json, "vessels").flatMap(({ at, value }) => {
    const capacity = readQuantity(mass, value.capacity).value;
    const emptyAt = readQuantity(mass, value.emptyAt).value;
    if (capacity === null || emptyAt === null || emptyAt <= capacity) return [];
    const found = "emptying is called for at more than the vessel holds";
    return [faultAt([...at, "emptyAt"], found, `${value.capacity} or less`, "lower it")];
  });
}
