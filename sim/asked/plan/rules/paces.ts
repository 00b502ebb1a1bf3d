import { readClock } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, locatedList } from "./located.ts";
import { workplacesOf } from "./stages.ts";

/** The hours of a pace come one after another. */
export function paces(json: unknown): Fault[] {
  return workplacesOf(json).flatMap(({ at }) => inOrder(locatedList(json, ...at, "pace")));
}

function inOrder(parts: readonly Located[]): Fault[] {
  return parts.flatMap(({ at, value }, index) => {
    const before = readClock(parts[index - 1]?.value.from).value;
    const from = readClock(value.from).value;
    if (before === null || from === null || before < from) return [];
    const found = `"${value.from}" is not after "${parts[index - 1]!.value.from}"`;
    return [faultAt([...at, "from"], found, "hours in their order, each once", "put the entries in order")];
  });
}
