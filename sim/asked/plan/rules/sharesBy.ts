import { mass, readQuantity, time } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import type { Point } from "../plan.ts";
import { readPoint } from "../readPoint.ts";
import { faultAt, type Located, located, locatedList } from "./located.ts";
import { stagesOf } from "./stages.ts";
import { comesAfter, type WayGraph, wayGraph } from "./wayGraph.ts";

/** A share that depends on the head says on what, its points are in order, and the time is over where the share is decided. */
export function sharesBy(json: unknown): Fault[] {
  const graph = wayGraph(json);
  return stagesOf(json).flatMap((stage) =>
    ["removals", "diversions"].flatMap((key) =>
      locatedList(json, ...stage.at, key).flatMap((branch) => [
        ...shareOrShareBy(branch),
        ...ofShareBy(json, located(json, ...branch.at, "shareBy"), stage, graph),
      ]),
    ),
  );
}

/** The shares by what a head is like, with the stage that decides. */
export function shareBysOf(json: unknown): Located[] {
  return stagesOf(json).flatMap(({ at }) =>
    ["removals", "diversions"].flatMap((key) =>
      locatedList(json, ...at, key).flatMap((branch) => located(json, ...branch.at, "shareBy") ?? []),
    ),
  );
}

function shareOrShareBy({ at, value }: Located): Fault[] {
  const [hasShare, hasBy] = [value.share !== undefined, value.shareBy !== undefined];
  if (hasShare !== hasBy) return [];
  const found = hasShare ? "both a share and a shareBy" : "neither a share nor a shareBy";
  const remedy = hasShare ? "keep one" : 'write for example "share": "1 %"';
  return [faultAt(at, found, 'exactly one of "share" and "shareBy"', remedy)];
}

function ofShareBy(json: unknown, by: Located | null, stage: Located, graph: WayGraph): Fault[] {
  if (by === null) return [];
  const [hasWeight, hasTime] = [by.value.weight !== undefined, by.value.time !== undefined];
  if (hasWeight === hasTime) {
    const found = hasWeight ? "both a weight and a time" : "neither a weight nor a time";
    return [faultAt(by.at, found, 'exactly one of "weight" and "time"', "say on which of them the share depends")];
  }
  const family = hasWeight ? mass : time;
  const points = locatedList(json, ...by.at, hasWeight ? "weight" : "time");
  return [
    ...points.flatMap((point, index) => inOrder(points[index - 1], point, family)),
    ...(hasWeight ? withoutPoints(by) : withPoints(by, stage, graph)),
  ];
}

function inOrder(before: Located | undefined, { at, value }: Located, family: typeof mass | typeof time): Fault[] {
  const [first, second] = [readQuantity(family, before?.value.at).value, readQuantity(family, value.at).value];
  if (first === null || second === null || first < second) return [];
  const found = `"${value.at}" is not more than "${before!.value.at}"`;
  return [faultAt([...at, "at"], found, "points in their order, each once", "put them in order")];
}

function withoutPoints({ at, value }: Located): Fault[] {
  return ["from", "to"].flatMap((key) =>
    value[key] === undefined
      ? []
      : [faultAt([...at, key], "a weight has no time between points", "nothing", "delete it")],
  );
}

function withPoints({ at, value }: Located, stage: Located, graph: WayGraph): Fault[] {
  if (value.from === undefined)
    return [
      faultAt(at, "a time without the point where it starts", 'the key "from"', 'write for example "from": "arrival"'),
    ];
  const end: Point = { stage: String(stage.value.name), moment: "end" };
  const from = readPoint(value.from).value;
  const to = value.to === undefined ? end : readPoint(value.to).value;
  if (from === null || to === null) return [];
  const words = value.to === undefined ? `end of ${stage.value.name}` : value.to;
  if (comesAfter(graph, from, to) === false) {
    const found = `"${words}" does not come after "${value.from}" on a head's way`;
    return [faultAt([...at, "from"], found, "an earlier point than that of to", "name an earlier point")];
  }
  const isEnd = to.stage === end.stage && to.moment === "end";
  if (isEnd || comesAfter(graph, to, end) !== false) return [];
  const found = `"${words}" comes after the end of ${stage.value.name}, where the share is decided`;
  return [faultAt([...at, "to"], found, "a point before it", "name an earlier point")];
}
