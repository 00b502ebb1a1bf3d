import { type Deed, does, stageKind } from "../../../text/kinds/index.ts";
import { type Located, located, locatedList, namesOf } from "./located.ts";

/** The stages of the line as written, without those that are left out. */
export function stagesOf(json: unknown): Located[] {
  return locatedList(json, "line").filter(({ value }) => value.leftOut !== true);
}

/** Whether stages of the kind that the file gives it do that; false for a kind that there is not. */
export function writtenDoes({ kind }: Located["value"], deed: Deed): boolean {
  const known = stageKind(kind);
  return known !== null && does({ kind: known }, deed);
}

/** The stations on chains, chain by chain. */
export function chainStationsOf(json: unknown, stage: Located): Located[] {
  return writtenDoes(stage.value, "carry stations") ? locatedList(json, ...stage.at, "stations") : [];
}

/** Every stage, and behind each chain the stations on it. */
export function workplacesOf(json: unknown): Located[] {
  return stagesOf(json).flatMap((stage) => [stage, ...chainStationsOf(json, stage)]);
}

/** Stations with a cycle of their own, on a chain or not. */
export function stationsOf(json: unknown): Located[] {
  return stagesOf(json).flatMap((stage) => (writtenDoes(stage.value, "work") ? [stage] : chainStationsOf(json, stage)));
}

/** Names of stages, and of stations on chains, that are written but left out. */
export function leftOutNames(json: unknown): string[] {
  const out = locatedList(json, "line").filter(({ value }) => value.leftOut === true);
  return namesOf(out.flatMap((stage) => [stage, ...chainStationsOf(json, stage)]));
}

/** Dwell stages behind the killing and bleeding, where carcasses can stay: no animal ever waits before. */
export function chillersOf(json: unknown): Located[] {
  const stages = stagesOf(json);
  const killed = stages.findLastIndex((stage) => isKilling(json, stage));
  return stages.slice(killed + 1).filter(({ value }) => writtenDoes(value, "hold heads"));
}

/** A stage where animals are killed or bled: by its name, or by what the plan says of it. */
function isKilling(json: unknown, { value }: Located): boolean {
  const told = [located(json, "day", "safeStop")?.value.to, located(json, "stunned")?.value.to];
  return told.includes(value.name) || /stun|stick|bleed/i.test(String(value.name));
}
