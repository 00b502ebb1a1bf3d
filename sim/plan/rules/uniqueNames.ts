import type { Fault } from "../fault.ts";
import { expandedLoadNames } from "./expandedLoadNames.ts";
import { faultAt, type Located, locatedList } from "./located.ts";

/** No two things of one kind share a name, since names are how they are spoken of. */
export function uniqueNames(json: unknown): Fault[] {
  const stages = locatedList(json, "line");
  const lists: [Located[], string][] = [
    [locatedList(json, "crews"), "crews"],
    [stages, "stages"],
    [locatedList(json, "limits"), "limits"],
    [locatedList(json, "day", "shifts"), "shifts"],
    [locatedList(json, "day", "breaks"), "breaks"],
    ...stages.map(({ at }): [Located[], string] => [
      locatedList(json, ...at, "breakdowns"),
      "breakdowns of this stage",
    ]),
  ];
  const removals = stages.flatMap(({ at }) =>
    repeated(locatedList(json, ...at, "removals"), "removals of this stage", "as"),
  );
  return [...lists.flatMap(([list, what]) => repeated(list, what, "name")), ...removals, ...loadNames(json)];
}

function repeated(list: readonly Located[], what: string, key: string): Fault[] {
  const seen = new Set<unknown>();
  return list.flatMap(({ at, value }) => {
    const name = value[key];
    if (typeof name !== "string" || !seen.has(name)) {
      seen.add(name);
      return [];
    }
    return [faultAt([...at, key], `'${name}' stands twice among the ${what}`, "each name once", "rename one of them")];
  });
}

function loadNames(json: unknown): Fault[] {
  const seen = new Set<string>();
  return locatedList(json, "supply", "loads").flatMap(({ at, value }) => {
    const twice = expandedLoadNames(value).find((name) => seen.has(name));
    for (const name of expandedLoadNames(value)) seen.add(name);
    if (twice === undefined) return [];
    const found = `'${twice}' stands twice among the loads, repeats counted`;
    return [faultAt([...at, "name"], found, "each name once", "rename one of them")];
  });
}
