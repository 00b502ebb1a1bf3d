import { type StageKind, stageKind } from "../../../text/kinds/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located } from "../rules/located.ts";
import { sendsOf } from "../rules/sends.ts";
import { stagesOf } from "../rules/stages.ts";
import { reachedFrom, type WayGraph, wayGraph } from "../rules/wayGraph.ts";

/**
 * Stages that send heads round in a ring can all be full and wait for each other. One stage of the ring without a limit
 * of places is enough to prevent it.
 */
export function ringLocks(json: unknown): Fault[] {
  const stages = stagesOf(json);
  const graph = finiteOnly(wayGraph(json), stages);
  const back = sentBack(json, stages);
  return stages.flatMap((stage) => {
    const name = String(stage.value.name);
    const isSuspect = stage.value.offLine === true || back.has(name);
    if (!isSuspect || !reachedFrom(graph, `in ${name}`).has(`in ${name}`)) return [];
    return [lock(stage, name)];
  });
}

/** What the places of a kind are called in the file; null where they follow from something else. */
const PLACES_KEYS: Record<StageKind, "buffer" | "places" | null> = { station: "buffer", dwell: "places", chain: null };

function placesKey({ kind }: Located["value"]): "buffer" | "places" | null {
  const known = stageKind(kind);
  return known && PLACES_KEYS[known];
}

function lock({ at, value }: Located, name: string): Fault {
  const key = placesKey(value);
  const found = `heads sent to '${name}' can come back to it, and every stage on the way round has limited places: all of them can be full and wait for each other for ever`;
  const remedy = key === null ? 'give a station of the ring "buffer": null' : `"${key}": null prevents it`;
  return faultAt(key === null ? at : [...at, key], found, "", remedy);
}

function finiteOnly(graph: WayGraph, stages: readonly Located[]): WayGraph {
  const free = new Set(stages.filter(hasNoLimit).map(({ value }) => `in ${value.name}`));
  return new Map([...graph].filter(([node]) => !free.has(node)));
}

function hasNoLimit({ value }: Located): boolean {
  const key = placesKey(value);
  return key !== null && value[key] === null;
}

/** Names of stages that a stage of the line sends heads up the line to. */
function sentBack(json: unknown, stages: readonly Located[]): Set<string> {
  const index = new Map(stages.map(({ value }, at) => [value.name, at]));
  const offLine = new Set(stages.filter(({ value }) => value.offLine === true).map(({ value }) => value.name));
  const back = sendsOf(json).filter(
    ({ stage, to }) => !offLine.has(stage) && (index.get(to) as number) < (index.get(stage) as number),
  );
  return new Set(back.map(({ to }) => to));
}
