import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { crateStepsOf } from "./crateSteps.ts";
import { faultAt, type Located, locatedList, locatedTexts } from "./located.ts";
import { leftOutNames, workplacesOf } from "./stages.ts";

/** What a shared breakdown stops is there, can be stopped, and is named once. */
export function sharedBreakdowns(json: unknown): Fault[] {
  return locatedList(json, "sharedBreakdowns").flatMap((breakdown) => stopsOf(json, breakdown));
}

function stopsOf(json: unknown, { at }: Located): Fault[] {
  const places = workplacesOf(json);
  const dwells = places.filter(({ value }) => value.kind === "dwell").map(({ value }) => value.name);
  const named = [...crateStepsOf(json).map(({ name }) => name), ...places.map(({ value }) => value.name)];
  const names = named.filter((name): name is string => typeof name === "string" && !dwells.includes(name));
  const stops = locatedTexts(json, ...at, "stops");
  return stops.flatMap(({ at: place, text }, index) => {
    if (stops.findIndex((other) => other.text === text) < index)
      return [faultAt(place, `'${text}' stands twice among what it stops`, "each name once", "delete one of them")];
    if (names.includes(text)) return [];
    if (dwells.includes(text))
      return [
        faultAt(place, `'${text}' is a dwell, in which nothing runs that could stop`, listWords(names), "delete it"),
      ];
    if (leftOutNames(json).includes(text))
      return [faultAt(place, `'${text}' is left out`, listWords(names), `name one of these or put '${text}' back`)];
    const remedy = nearestWords(text, names, "name one of these or add the stage");
    return [faultAt(place, `'${text}' is no stage or crate step`, listWords(names), remedy)];
  });
}
