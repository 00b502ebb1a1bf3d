import { readClock, readQuantity, time } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, locatedList, locatedTexts, namesOf } from "./located.ts";

interface Pause {
  at: Located["at"];
  name: string;
  from: number;
  to: number;
  /** Names of crews, then of stages; told apart by a mark. */
  who: string[];
}

/** Every break is somebody's, and nobody has two at once. */
export function breaksForSomeone(json: unknown): Fault[] {
  const pauses = locatedList(json, "day", "breaks").flatMap((pause) => pauseOf(json, pause));
  return [...pauses.flatMap(forNobody), ...pauses.flatMap((pause, index) => overlap(pause, pauses.slice(0, index)))];
}

function pauseOf(json: unknown, { at, value }: Located): Pause[] {
  const from = readClock(value.at).value;
  const length = readQuantity(time, value.length).value;
  if (from === null || length === null) return [];
  const crews = value.crews === undefined ? namesOf(locatedList(json, "crews")) : textsOf(json, [...at, "crews"]);
  const who = [
    ...crews.map((crew) => `crew '${crew}'`),
    ...textsOf(json, [...at, "stages"]).map((stage) => `stage '${stage}'`),
  ];
  return [{ at, name: String(value.name), from, to: from + length, who }];
}

function textsOf(json: unknown, at: Located["at"]): string[] {
  return locatedTexts(json, ...at).map(({ text }) => text);
}

function forNobody({ at, who }: Pause): Fault[] {
  if (who.length > 0) return [];
  return [
    faultAt(
      at,
      "no crew and no machine takes this break",
      "at least one crew or stage",
      "name one, or delete the break",
    ),
  ];
}

function overlap(pause: Pause, earlier: readonly Pause[]): Fault[] {
  for (const other of earlier) {
    const both = pause.who.find((one) => other.who.includes(one));
    if (both !== undefined && pause.from < other.to && other.from < pause.to) {
      return [
        faultAt(
          pause.at,
          `${both} already pauses in '${other.name}' at that time`,
          "breaks one after another",
          "move one of them",
        ),
      ];
    }
  }
  return [];
}
