import { type Located, locatedList, namesOf } from "./located.ts";

/** The stages of the line as written, without those that are left out. */
export function stagesOf(json: unknown): Located[] {
  return locatedList(json, "line").filter(({ value }) => value.leftOut !== true);
}

/** The stations on chains, chain by chain. */
export function chainStationsOf(json: unknown, stage: Located): Located[] {
  return stage.value.kind === "chain" ? locatedList(json, ...stage.at, "stations") : [];
}

/** Every stage, and behind each chain the stations on it. */
export function workplacesOf(json: unknown): Located[] {
  return stagesOf(json).flatMap((stage) => [stage, ...chainStationsOf(json, stage)]);
}

/** Stations with a cycle of their own, on a chain or not. */
export function stationsOf(json: unknown): Located[] {
  return stagesOf(json).flatMap((stage) => (stage.value.kind === "station" ? [stage] : chainStationsOf(json, stage)));
}

/** Names of stages, and of stations on chains, that are written but left out. */
export function leftOutNames(json: unknown): string[] {
  const out = locatedList(json, "line").filter(({ value }) => value.leftOut === true);
  return namesOf(out.flatMap((stage) => [stage, ...chainStationsOf(json, stage)]));
}
