import type { Fault } from "../fault.ts";
import { faultAt, type Located } from "./located.ts";
import { nextStage } from "./nextStage.ts";
import { stagesOf } from "./stages.ts";

/** Heads are hung at a station, and onto a chain without a way of their own: its shackles move on. */
export function hanging(json: unknown): Fault[] {
  const stages = stagesOf(json);
  return [...firstIsStation(stages), ...stages.flatMap((_, index) => travelOntoChain(stages, index))];
}

function firstIsStation([first]: readonly Located[]): Fault[] {
  if (first === undefined || (first.value.kind !== "dwell" && first.value.kind !== "chain")) return [];
  const remedy =
    'put a station before it that hangs the heads, say { "kind": "station", "name": "hanging", "cycle": "5 s" }';
  return [faultAt(first.at, `the line begins with a ${first.value.kind}`, "a station", remedy)];
}

function travelOntoChain(stages: readonly Located[], index: number): Fault[] {
  const { at, value } = stages[index] as Located;
  if (value.travel === undefined || value.travel === null) return [];
  const next = stages.find((stage) => stage.value.name === nextStage(stages, index));
  if (next?.value.kind !== "chain") return [];
  const found = `a way onto the chain '${next.value.name}', whose shackles do not wait for it`;
  return [faultAt([...at, "travel"], found, "none before a chain", "make the chain longer by it, or delete it")];
}
