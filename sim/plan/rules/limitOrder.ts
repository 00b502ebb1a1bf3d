import { readQuantity, time } from "../../units/index.ts";
import type { Fault } from "../fault.ts";
import { MOMENTS, type Point } from "../plan.ts";
import { readPoint } from "../readPoint.ts";
import { faultAt, type Located, locatedList, namesOf } from "./located.ts";

/** A limit bounds something, and runs down the line. */
export function limitOrder(json: unknown): Fault[] {
  const stages = namesOf(locatedList(json, "line"));
  return locatedList(json, "limits").flatMap((limit) => [...bounds(limit), ...direction(limit, stages)]);
}

function bounds({ at, value }: Located): Fault[] {
  const min = value.min ?? null;
  const max = value.max ?? null;
  if (min === null && max === null)
    return [faultAt(at, "neither a min nor a max", "at least one of them", 'write for example "max": "10 s"')];
  const least = readQuantity(time, min).value;
  const most = readQuantity(time, max).value;
  if (least === null || most === null || least <= most) return [];
  return [faultAt(at, "min is more than max", "min <= max", "put the two in order")];
}

function direction({ at, value }: Located, stages: readonly string[]): Fault[] {
  const from = place(readPoint(value.from).value, stages);
  const to = place(readPoint(value.to).value, stages);
  if (from === null || to === null || from < to) return [];
  const found = `"${value.to}" does not come after "${value.from}" on a head's way`;
  return [faultAt([...at, "to"], found, "a later point than that of from", "swap the two, or name a later point")];
}

/** Rank on a head's way; null when the point or its stage is unknown. */
function place(point: Point | null, stages: readonly string[]): number | null {
  if (point === null) return null;
  if (point.stage === null) return point.moment === "entry" ? -1 : Number.POSITIVE_INFINITY;
  const index = stages.indexOf(point.stage);
  return index === -1 ? null : index * MOMENTS.length + MOMENTS.indexOf(point.moment);
}
