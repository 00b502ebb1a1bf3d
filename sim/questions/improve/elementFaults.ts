import { type Fault, formatPath, listWords, nearestWords } from "../../asked/plan/index.ts";
import type { Element } from "./space.ts";

type At = readonly (string | number)[];

export interface ElementPlace {
  /** Where the file has the allocation. */
  at: At;
  /** The key that names an element. */
  key: string;
  /** What it names. */
  what: string;
}

/** Elements that are named twice, that the plan does not have, or whose bounds are the wrong way round. */
export function elementFaults(
  elements: readonly Element[],
  { at, key, what }: ElementPlace,
  known: readonly { name: string }[],
): Fault[] {
  const names = known.map(({ name }) => name);
  return elements.flatMap(({ name, from, to }, index) => {
    const path = (...rest: At) => formatPath([...at, "among", index, ...rest]);
    const faults: Fault[] = [];
    if (!names.includes(name))
      faults.push({
        path: path(key),
        found: `'${name}' is no ${what}`,
        allowed: listWords(names),
        remedy: nearestWords(name, names, "name one of these"),
      });
    if (elements.findIndex((other) => other.name === name) < index)
      faults.push({
        path: path(key),
        found: `'${name}' stands twice`,
        allowed: "each name once",
        remedy: "delete one of them",
      });
    if (from > to)
      faults.push({
        path: path("from"),
        found: `${from}, more than to, which is ${to}`,
        allowed: `${to} or less`,
        remedy: "",
      });
    return faults;
  });
}

/** Least and most that a design takes of the total; what the elements allow bounds both. */
export function totals(
  elements: readonly Element[],
  { total, least, at }: { total: number; least: number | undefined; at: At },
): { range: { least: number; most: number }; faults: Fault[] } {
  const fewest = elements.reduce((sum, { from }) => sum + from, 0);
  const greatest = elements.reduce((sum, { to }) => sum + to, 0);
  const fault = (key: string, found: string, allowed: string): Fault[] => [
    { path: formatPath([...at, key]), found, allowed, remedy: "" },
  ];
  const faults = [
    ...(total < fewest ? fault("total", `${total}, fewer than the elements take`, `${fewest} or more`) : []),
    ...(least !== undefined && least > total
      ? fault("least", `${least}, more than total, which is ${total}`, `${total} or less`)
      : []),
    ...(least !== undefined && least > greatest
      ? fault("least", `${least}, more than the elements can take`, `${greatest} or less`)
      : []),
  ];
  return { range: { least: Math.max(fewest, least ?? 0), most: Math.min(total, greatest) }, faults };
}
