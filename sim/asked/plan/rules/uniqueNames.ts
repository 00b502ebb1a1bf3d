import type { Fault } from "../fault.ts";
import { crateStepsOf } from "./crateSteps.ts";
import { expandedLoadNames } from "./expandedLoadNames.ts";
import { faultAt, type Located, locatedList } from "./located.ts";
import { chainStationsOf } from "./stages.ts";

/** No two things of one kind share a name, since names are how they are spoken of. Stages that are left out keep theirs. */
export function uniqueNames(json: unknown): Fault[] {
  const stages = locatedList(json, "line").flatMap((stage) => [stage, ...chainStationsOf(json, stage)]);
  const whole: [Located[], string][] = [
    [locatedList(json, "crews"), "crews"],
    [locatedList(json, "sharedBreakdowns"), "shared breakdowns"],
    [stages, "stages"],
    [locatedList(json, "limits"), "limits"],
    [locatedList(json, "gates"), "gates"],
    [locatedList(json, "vessels"), "vessels"],
    [locatedList(json, "uncertain"), "uncertain figures"],
    [locatedList(json, "utilities", "consumers"), "consumers"],
    [locatedList(json, "day", "shifts"), "shifts"],
    [locatedList(json, "day", "breaks"), "breaks"],
  ];
  const places = [...crateStepsOf(json), ...stages];
  const ofPlaces = OF_ONE_STAGE.flatMap(([key, what, called]) =>
    places.flatMap(({ at }) => repeated(locatedList(json, ...at, key), `${what} of this stage`, called)),
  );
  return [...whole.flatMap(([list, what]) => repeated(list, what, "name")), ...ofPlaces, ...loadNames(json)];
}

/** Lists that each stage has for itself: key, what they hold, the key of an entry's name. */
const OF_ONE_STAGE: readonly [string, string, string][] = [
  ["breakdowns", "breakdowns", "name"],
  ["removals", "removals", "as"],
  ["diversions", "diversions", "to"],
  ["takesOff", "by-products", "name"],
  ["settings", "settings", "name"],
];

/** Those of a list that have a name which one before has. `what`: the list in words; `key`: of the name. */
export function repeated(list: readonly Located[], what: string, key: string): Fault[] {
  const seen = new Set<unknown>();
  return list.flatMap(({ at, value }) => {
    const name = value[key];
    if (typeof name !== "string" || !seen.has(name)) {
      seen.add(name);
      return [];
    }
    return [faultAt([...at, key], `'${name}' appears twice among the ${what}`, "each name once", "rename one of them")];
  });
}

function loadNames(json: unknown): Fault[] {
  const seen = new Set<string>();
  return locatedList(json, "supply", "loads").flatMap(({ at, value }) => {
    const twice = expandedLoadNames(value).find((name) => seen.has(name));
    for (const name of expandedLoadNames(value)) seen.add(name);
    if (twice === undefined) return [];
    const found = `'${twice}' appears twice among the loads, counting repeats`;
    return [faultAt([...at, "name"], found, "each name once", "rename one of them")];
  });
}
