import type { Fault } from "../fault.ts";
import { isRecord } from "../isRecord.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { readPoint } from "../readPoint.ts";
import { crewUses } from "./crewUses.ts";
import { faultAt, located, locatedList, locatedTexts, namesOf } from "./located.ts";
import { passesUnfinished, sendsOf } from "./sends.ts";
import { shareBysOf } from "./sharesBy.ts";
import { leftOutNames, stagesOf, workplacesOf } from "./stages.ts";

type Steps = readonly (string | number)[];
type Text = { at: Steps; text: string };

/** Every crew, stage, vessel, product and shift that is spoken of exists. */
export function references(json: unknown): Fault[] {
  return [
    ...crews(json),
    ...stages(json),
    ...points(json),
    ...vessels(json),
    ...products(json),
    ...rooms(json),
    ...shiftNames(json),
  ];
}

function crews(json: unknown): Fault[] {
  const names = namesOf(locatedList(json, "crews"));
  const breaks = locatedList(json, "day", "breaks");
  const texts = [
    ...crewUses(json).flatMap((use) => use.crews),
    ...breaks.flatMap(({ at }) => locatedTexts(json, ...at, "crews")),
    ...breaks.flatMap(({ at, value }) => keysOf(value.later, [...at, "later"])),
    ...locatedTexts(json, "day", "cleaning", "crews"),
    ...locatedList(json, "crews").flatMap(({ at }) => locatedTexts(json, ...at, "cover")),
  ];
  return texts.flatMap((text) => missing(text, names, "crew"));
}

/** Stages that heads can be sent to. */
function stages(json: unknown): Fault[] {
  const names = namesOf(stagesOf(json));
  const unused = stagesOf(json).flatMap((stage) =>
    passesUnfinished(json, stage) ? [] : textAt(stage.value.unfinishedTo, [...stage.at, "unfinishedTo"]),
  );
  const texts = [...sendsOf(json).map(({ at, to }) => ({ at, text: to })), ...unused];
  return texts.flatMap((text) => missing(text, names, "stage", leftOutNames(json)));
}

/** Places of work, stations on chains included. */
function points(json: unknown): Fault[] {
  const names = namesOf(workplacesOf(json));
  const stretches = [located(json, "day", "safeStop"), located(json, "stunned")].filter((each) => each !== null);
  const texts = [
    ...locatedList(json, "day", "breaks").flatMap(({ at }) => locatedTexts(json, ...at, "stages")),
    ...stretches.flatMap(({ at, value }) => ["from", "to"].flatMap((key) => textAt(value[key], [...at, key]))),
    ...[...locatedList(json, "limits"), ...locatedList(json, "gates"), ...shareBysOf(json)].flatMap(({ at, value }) =>
      ["from", "to"].flatMap((key) => textAt(readPoint(value[key]).value?.stage, [...at, key])),
    ),
  ];
  return texts.flatMap((text) => missing(text, names, "stage", leftOutNames(json)));
}

function vessels(json: unknown): Fault[] {
  const names = namesOf(locatedList(json, "vessels"));
  const texts = workplacesOf(json).flatMap((stage) =>
    locatedList(json, ...stage.at, "takesOff").flatMap(({ at, value }) => textAt(value.vessel, [...at, "vessel"])),
  );
  return texts.flatMap((text) => missing(text, names, "vessel"));
}

/** A price may speak of what a stage that is left out would give: studies leave stages out by turns. */
function products(json: unknown): Fault[] {
  const all = locatedList(json, "line").flatMap((stage) => [stage, ...locatedList(json, ...stage.at, "stations")]);
  const byProducts = all.flatMap(({ at }) => namesOf(locatedList(json, ...at, "takesOff")));
  const waysOut = all.flatMap(({ at }) =>
    locatedList(json, ...at, "removals").flatMap(({ value }) => (typeof value.as === "string" ? [value.as] : [])),
  );
  const names = [...new Set(["carcass", ...byProducts, ...waysOut, "dead on arrival"])];
  const spoken = [located(json, "money", "prices"), located(json, "site", "categoryOf")].filter(
    (each) => each !== null,
  );
  return spoken.flatMap(({ value, at }) => keysOf(value, at).flatMap((text) => missing(text, names, "product")));
}

/** What is said to stand in a room: a stage, a station on a chain, or a section of the line. */
function rooms(json: unknown): Fault[] {
  const said = located(json, "site", "roomOf");
  if (said === null) return [];
  const sections = stagesOf(json).flatMap(({ value }) => (typeof value.section === "string" ? [value.section] : []));
  const names = [...namesOf(workplacesOf(json)), ...namesOf(stagesOf(json)), ...sections];
  return keysOf(said.value, said.at).flatMap((text) => missing(text, names, "stage or section", leftOutNames(json)));
}

function shiftNames(json: unknown): Fault[] {
  const shifts = namesOf(locatedList(json, "day", "shifts"));
  return locatedList(json, "crews").flatMap(({ at, value }) =>
    keysOf(value.people, [...at, "people"]).flatMap((text) => missing(text, shifts, "shift")),
  );
}

function keysOf(value: unknown, at: Steps): Text[] {
  return isRecord(value) ? Object.keys(value).map((key) => ({ at: [...at, key], text: key })) : [];
}

function textAt(value: unknown, at: Steps): Text[] {
  return typeof value === "string" ? [{ at, text: value }] : [];
}

function missing({ at, text }: Text, all: readonly string[], what: string, leftOut: readonly string[] = []): Fault[] {
  const names = [...new Set(all)];
  if (names.includes(text)) return [];
  if (leftOut.includes(text)) {
    return [faultAt(at, `'${text}' is left out`, listWords(names), `name one of these or put '${text}' back`)];
  }
  const remedy = nearestWords(text, names, `name one of these or add the ${what}`);
  return [faultAt(at, `'${text}' is not a ${what}`, listWords(names), remedy)];
}
