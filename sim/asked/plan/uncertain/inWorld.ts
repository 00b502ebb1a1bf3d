import type { Fault } from "../fault.ts";
import { parsePath } from "../parsePath.ts";
import type { UncertainFigure } from "../plan.ts";
import { resolvePath } from "../resolvePath.ts";
import { noPath } from "../setPath.ts";
import { type Scaled, scaled } from "./scaled.ts";

/** A figure of which it is said what it is multiplied by, at each of its paths. */
export type FactoredFigure = Pick<UncertainFigure, "paths"> & { factors: readonly number[] };

/**
 * The JSON of a plan as if its figures were so many times what it says, in which nothing is uncertain any more. `json`
 * is left as it is. Paths that lead nowhere are told of.
 */
export function inWorld(
  json: Record<string, unknown>,
  figures: readonly FactoredFigure[],
): { json: Record<string, unknown>; faults: Fault[] } {
  const { uncertain: _, ...known } = structuredClone(json);
  const faults = figures.flatMap(({ paths, factors }) =>
    paths.flatMap((path, index) => scalePathInPlace(known, path, factors[index]!) ?? []),
  );
  return { json: known, faults };
}

function scalePathInPlace(json: unknown, path: string, factor: number): Fault | null {
  const steps = parsePath(path);
  if (steps === null) return noPath(path);
  const { place, fault } = resolvePath(json, steps);
  if (fault !== null) return { path, ...fault };
  const parent = place.parent as Record<PropertyKey, unknown>;
  const found: Scaled = scaled(parent[place.key], factor);
  if (found.fault !== null) return { path, ...found.fault };
  parent[place.key] = found.value;
  return null;
}
