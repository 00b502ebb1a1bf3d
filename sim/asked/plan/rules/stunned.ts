import { does, stageKind } from "../../../text/kinds/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, located } from "./located.ts";
import { nextStage } from "./nextStage.ts";
import { chainStationsOf, stagesOf, workplacesOf } from "./stages.ts";

/** The care for stunned heads does something, and its two stations lie one after the other on the heads' usual way. */
export function stunned(json: unknown): Fault[] {
  const care = located(json, "stunned");
  if (care === null) return [];
  return [...doesNothing(care), ...ends(json, care)];
}

function doesNothing({ at, value }: Located): Fault[] {
  if (value.hold !== false || (value.late ?? null) !== null) return [];
  const remedy = 'write "hold": true, add "late", or delete "stunned"';
  return [faultAt(at, "it neither holds heads back nor helps one that waits", "at least one of the two", remedy)];
}

function ends(json: unknown, care: Located): Fault[] {
  const places = workplacesOf(json);
  const faults = ["from", "to"].flatMap((key) => notAStation(care, key, places));
  const [from, to] = [String(care.value.from), String(care.value.to)];
  const isKnown = [from, to].every((name) => places.some(({ value }) => value.name === name));
  if (faults.length > 0 || !isKnown || usualWay(json, from).includes(to)) return faults;
  const allowed = "a station that heads come to after from when nothing sends them elsewhere";
  return [
    faultAt([...care.at, "to"], `'${to}' does not follow '${from}' on the line`, allowed, "name a later station"),
  ];
}

/** Chains and dwell stages work on nothing. */
function notAStation({ at, value: care }: Located, key: string, places: readonly Located[]): Fault[] {
  const stage = places.find(({ value }) => value.name === care[key])?.value;
  const kind = stageKind(stage?.kind);
  if (stage === undefined || kind === null || does({ kind }, "work")) return [];
  const found = `'${stage.name}' is a ${kind}`;
  return [faultAt([...at, key], found, "a station, on a chain or not", "name the station where the work is done")];
}

/** The stations behind that one, in the order in which heads pass them when nothing sends them elsewhere. */
function usualWay(json: unknown, from: string): string[] {
  const stages = stagesOf(json);
  const onIt = (index: number) => chainStationsOf(json, stages[index]!).map(({ value }) => value.name);
  let at = stages.findIndex(({ value }, index) => value.name === from || onIt(index).includes(from));
  const way = onIt(at).slice(onIt(at).indexOf(from) + 1);
  const seen = new Set<number>();
  while (at >= 0 && !seen.has(at)) {
    seen.add(at);
    const next = nextStage(stages, at);
    at = stages.findIndex(({ value }) => value.name === next);
    if (at >= 0 && !seen.has(at)) way.push(stages[at]!.value.name, ...onIt(at));
  }
  return way.filter((name) => typeof name === "string");
}
