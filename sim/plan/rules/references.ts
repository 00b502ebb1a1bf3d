import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { readPoint } from "../readPoint.ts";
import { crewUses } from "./crewUses.ts";
import { faultAt, locatedList, locatedTexts, namesOf } from "./located.ts";

type Steps = readonly (string | number)[];

/** Every crew, stage and shift that is spoken of exists. */
export function references(json: unknown): Fault[] {
  const crews = namesOf(locatedList(json, "crews"));
  const stages = namesOf(locatedList(json, "line"));
  const breaks = locatedList(json, "day", "breaks");
  return [
    ...crewUses(json).flatMap(({ at, crew }) => missing(crew, crews, "crew", at)),
    ...breaks.flatMap(({ at }) => missingTexts(locatedTexts(json, ...at, "crews"), crews, "crew")),
    ...breaks.flatMap(({ at, value }) => laterCrews(at, value.later, crews)),
    ...breaks.flatMap(({ at }) => missingTexts(locatedTexts(json, ...at, "stages"), stages, "stage")),
    ...locatedList(json, "limits").flatMap(({ at, value }) =>
      ["from", "to"].flatMap((key) =>
        missing(readPoint(value[key]).value?.stage ?? null, stages, "stage", [...at, key]),
      ),
    ),
    ...shiftNames(json),
  ];
}

function laterCrews(at: Steps, later: unknown, crews: readonly string[]): Fault[] {
  if (typeof later !== "object" || later === null || Array.isArray(later)) return [];
  return Object.keys(later).flatMap((crew) => missing(crew, crews, "crew", [...at, "later", crew]));
}

function shiftNames(json: unknown): Fault[] {
  const shifts = namesOf(locatedList(json, "day", "shifts"));
  return locatedList(json, "crews").flatMap(({ at, value }) => {
    const people = value.people;
    if (typeof people !== "object" || people === null || Array.isArray(people)) return [];
    return Object.keys(people).flatMap((shift) => missing(shift, shifts, "shift", [...at, "people", shift]));
  });
}

function missingTexts(texts: readonly { at: Steps; text: string }[], names: readonly string[], what: string): Fault[] {
  return texts.flatMap(({ at, text }) => missing(text, names, what, at));
}

function missing(written: string | null, names: readonly string[], what: string, at: Steps): Fault[] {
  if (written === null || names.includes(written)) return [];
  const remedy = nearestWords(written, names, `name one of these or add the ${what}`);
  return [faultAt(at, `'${written}' is no ${what}`, listWords(names), remedy)];
}
