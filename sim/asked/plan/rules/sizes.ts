import { readClock, readQuantity, time } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { isRecord } from "../isRecord.ts";
import { CEILINGS } from "../schema/ceilings.ts";
import { faultAt, type Located, locatedList } from "./located.ts";
import { workplacesOf } from "./stages.ts";

/** The whole supply and the whole line stay within the ceilings, repeats counted. */
export function sizes(json: unknown): Fault[] {
  const loads = locatedList(json, "supply", "loads");
  const lorries = loads.reduce((sum, load) => sum + timesOf(load), 0);
  const heads = loads.reduce(
    (sum, load) => sum + timesOf(load) * countOf(load, "crates") * countOf(load, "headsPerCrate"),
    0,
  );
  return [
    ...(lorries > CEILINGS.loads ? [tooMany(`${lorries} loads, counting repeats`, CEILINGS.loads)] : []),
    ...(heads > CEILINGS.heads ? [tooMany(`${heads} heads in all loads`, CEILINGS.heads)] : []),
    ...loads.flatMap(lastLorry),
    ...stageCount(json),
  ];
}

/** The schema has told of a list that is too long even without the stations on chains, and of an empty one. */
function stageCount(json: unknown): Fault[] {
  const stages = locatedList(json, "line");
  const kept = workplacesOf(json).length;
  if (stages.length > 0 && kept === 0) {
    return [faultAt(["line"], "every stage is left out", "1 or more stages", "put one back")];
  }
  if (stages.length > CEILINGS.stages || kept <= CEILINGS.stages) return [];
  const found = `${kept} stages, counting stations on chains`;
  return [faultAt(["line"], found, `${CEILINGS.stages} or less`, "combine some")];
}

function tooMany(found: string, most: number): Fault {
  return faultAt(["supply", "loads"], found, `${most} or less`, "is there a zero too many?");
}

function timesOf({ value }: Located): number {
  const times = isRecord(value.repeat) ? value.repeat.times : 1;
  return typeof times === "number" ? times : 1;
}

function countOf({ value }: Located, key: string): number {
  const count = value[key];
  return typeof count === "number" ? count : 0;
}

/** Clock times go to 99:59; a repeat that runs past them is a slip. */
function lastLorry(load: Located): Fault[] {
  const at = readClock(load.value.at).value;
  const every = isRecord(load.value.repeat) ? readQuantity(time, load.value.repeat.every).value : null;
  if (at === null || every === null || at + every * (timesOf(load) - 1) < 360_000) return [];
  const found = "the last of these lorries is due more than four days later";
  return [faultAt([...load.at, "repeat"], found, "before 100:00 on the clock of the day", "lower every or times")];
}
