import {
  type Fault,
  noPath,
  type PathStep,
  type Place,
  parsePath,
  resolvePath,
  setPathInPlace,
} from "../plan/index.ts";
import type { Change } from "./change.ts";
import type { Insertion } from "./study.ts";

/**
 * Makes a variant's JSON out of a copy of the base's, in place: sets values, then puts elements in, then takes things
 * out. Every path that leads nowhere is told of.
 */
export function applyChangeInPlace(json: unknown, { set, insert, remove }: Change): Fault[] {
  const steps = [
    ...Object.entries(set).map(([path, value]) => setPathInPlace(json, path, value)),
    ...insert.map((insertion) => insertInPlace(json, insertion)),
    ...removeInPlace(json, remove),
  ];
  return steps.filter((fault) => fault !== null);
}

function insertInPlace(json: unknown, { side, path, element }: Insertion): Fault | null {
  const found = placeOf(json, path);
  if (found.fault !== null) return found.fault;
  const { parent, key } = found.place;
  if (!Array.isArray(parent)) {
    const allowed = 'the path of an element of a list, such as "line.skinning"';
    return { path, found: "this is not an element of a list", allowed, remedy: "to give a key a value, set it" };
  }
  parent.splice(Number(key) + (side === "after" ? 1 : 0), 0, structuredClone(element));
  return null;
}

/** All paths are followed before anything is taken out, so that indexes mean what they say. */
function removeInPlace(json: unknown, paths: readonly string[]): (Fault | null)[] {
  const found = paths.map((path) => removable(json, path));
  const places = found.flatMap(({ place }) => (place === null ? [] : [place]));
  const lists = new Map<unknown[], Set<number>>();
  for (const { parent, key } of places) {
    if (Array.isArray(parent)) lists.set(parent, (lists.get(parent) ?? new Set()).add(Number(key)));
    else delete parent[key];
  }
  for (const [list, indices] of lists) {
    for (const index of [...indices].sort((a, b) => b - a)) list.splice(index, 1);
  }
  return found.map(({ fault }) => fault);
}

function removable(json: unknown, path: string): Found {
  const found = placeOf(json, path);
  if (found.fault !== null || Object.hasOwn(found.place.parent, found.place.key)) return found;
  const words = { found: "it is not there", allowed: "the path of something that is in the plan", remedy: "" };
  return { place: null, fault: { path, ...words } };
}

type Found = { place: Place; fault: null } | { place: null; fault: Fault };

function placeOf(json: unknown, path: string): Found {
  const steps: PathStep[] | null = parsePath(path);
  if (steps === null) return { place: null, fault: noPath(path) };
  const { place, fault } = resolvePath(json, steps);
  return fault === null ? { place, fault } : { place, fault: { path, ...fault } };
}
