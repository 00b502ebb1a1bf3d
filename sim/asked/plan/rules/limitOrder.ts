import { readQuantity, time } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { readPoint } from "../readPoint.ts";
import { faultAt, type Located, locatedList } from "./located.ts";
import { comesAfter, type WayGraph, wayGraph } from "./wayGraph.ts";

/** A limit bounds something; limits and gates run down the line. */
export function limitOrder(json: unknown): Fault[] {
  const graph = wayGraph(json);
  const limits = locatedList(json, "limits");
  return [
    ...limits.flatMap((limit) => [...bounds(limit), ...direction(limit, graph)]),
    ...locatedList(json, "gates").flatMap((gate) => direction(gate, graph)),
  ];
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

function direction({ at, value }: Located, graph: WayGraph): Fault[] {
  const from = readPoint(value.from).value;
  const to = readPoint(value.to).value;
  if (from === null || to === null || comesAfter(graph, from, to) !== false) return [];
  const found = `"${value.to}" does not come after "${value.from}" on a head's way`;
  return [faultAt([...at, "to"], found, "a later point than that of from", "swap the two, or name a later point")];
}
