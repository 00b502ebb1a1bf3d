import { readShare } from "../../units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, locatedList } from "./located.ts";

/** What a station's keys say of each other. */
export function stationWork(json: unknown): Fault[] {
  const stages = locatedList(json, "line");
  const stations = stages.filter(({ value }) => value.kind === "station");
  return [
    ...stations.flatMap(cycleOrRate),
    ...stations.flatMap(manualCrew),
    ...stages.flatMap((stage) => removals(json, stage)),
  ];
}

function cycleOrRate({ at, value }: Located): Fault[] {
  const hasCycle = value.cycle !== undefined;
  const hasRate = value.rate !== undefined;
  if (hasCycle !== hasRate) return [];
  const found = hasCycle ? "both a cycle and a rate" : "neither a cycle nor a rate";
  const remedy = hasCycle ? "keep one" : 'write for example "cycle": "5.5 s"';
  return [faultAt(at, found, 'exactly one of "cycle" and "rate"', remedy)];
}

function manualCrew({ at, value }: Located): Fault[] {
  if (value.work !== "manual" || (value.crew !== undefined && value.crew !== null)) return [];
  return [faultAt(at, "manual work without a crew", 'the name of a crew, or "work": "machine"', 'add the key "crew"')];
}

function removals(json: unknown, { at }: Located): Fault[] {
  const list = locatedList(json, ...at, "removals");
  const total = list.reduce((sum, { value }) => sum + (readShare(value.share).value ?? 0), 0);
  const carcasses = list.filter(({ value }) => value.as === "carcass");
  return [
    ...(total > 1
      ? [faultAt([...at, "removals"], "the shares add up to more than 1", "1 (100 %) or less", "lower them")]
      : []),
    ...carcasses.map((removal) =>
      faultAt(
        [...removal.at, "as"],
        "'carcass' is the word for heads that go the whole way",
        "another name",
        "rename it",
      ),
    ),
  ];
}
