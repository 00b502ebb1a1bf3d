import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { faultAt, type Located, located, locatedList } from "./located.ts";
import { chillersOf } from "./stages.ts";

/** What is there when the day begins has its place: crates in lairage, carcasses in a chiller behind the killing. */
export function atStart(json: unknown): Fault[] {
  const crates = locatedList(json, "atStart", "crates");
  return [...(crates.length === 0 ? [] : cratesFit(json, crates)), ...carcassesFit(json)];
}

function cratesFit(json: unknown, crates: readonly Located[]): Fault[] {
  const at = ["atStart", "crates"];
  const handling = located(json, "liveHandling");
  if (handling === null) {
    const found = "crates, but the plan has no live handling";
    return [faultAt(at, found, 'a plan with "supply.loads" and "liveHandling"', "delete them")];
  }
  const count = sumOf(crates, "crates");
  const fleet = located(json, "liveHandling", "fleet")?.value.crates;
  return [
    ...tooMany(at, count, handling.value.lairageCrates, "crates, and the lairage holds"),
    ...tooMany(at, count, fleet, "crates, and the fleet has"),
  ];
}

function carcassesFit(json: unknown): Fault[] {
  const chillers = chillersOf(json);
  const names = chillers.map(({ value }) => String(value.name));
  const entries = locatedList(json, "atStart", "carcasses");
  return [
    ...entries.flatMap(({ at, value }) => {
      const name = String(value.in);
      if (names.includes(name)) return [];
      const remedy = nearestWords(name, names, "name a chiller");
      return [faultAt([...at, "in"], `no carcasses can hang in '${name}'`, listWords(names), remedy)];
    }),
    ...chillers.flatMap(({ value: { name, places } }) => {
      const here = entries.filter(({ value }) => value.in === name);
      return tooMany(["atStart", "carcasses"], sumOf(here, "heads"), places, `carcasses in '${name}', which holds`);
    }),
  ];
}

function tooMany(at: readonly string[], count: number, most: unknown, words: string): Fault[] {
  if (typeof most !== "number" || count <= most) return [];
  return [faultAt(at, `${count} ${words} ${most}`, `${most} at most`, "lower them")];
}

function sumOf(entries: readonly Located[], key: string): number {
  return entries.reduce((sum, { value }) => sum + (typeof value[key] === "number" ? Number(value[key]) : 0), 0);
}
