import { parsePath, resolvePath } from "../../../sim/asked/plan/index.ts";

/** Something that can be moved: one number of the plan, and how the plan's JSON follows it. */
export interface Control {
  /** Stable name: the path it changes, and what of it. */
  id: string;
  /** Name of the group: a station, "Lorries and crates" ... */
  group: string;
  label: string;
  /** What is set, as a study file would name it. */
  path: string;
  /** Value in the plan as it is. */
  base: number;
  min: number;
  max: number;
  step: number;
  /** With its unit. */
  words: (value: number) => string;
  /** The JSON at `path` (as it is by now) with the new value in it. */
  change: (json: unknown, value: number) => unknown;
}

/** Which controls were moved, and to what. */
export type Moves = Readonly<Record<string, number>>;

/** What the moved controls set in the plan: path -> value, as in a study's `set`. Controls at their base value set nothing. */
export function changesOf(plan: unknown, controls: readonly Control[], moves: Moves): Record<string, unknown> {
  const set: Record<string, unknown> = {};
  for (const control of controls) {
    const value = moves[control.id];
    if (value === undefined || value === control.base) continue;
    const before = control.path in set ? set[control.path] : valueAt(plan, control.path);
    set[control.path] = control.change(before, value);
  }
  return set;
}

/** The JSON at a path of the plan; undefined where there is none. */
function valueAt(plan: unknown, path: string): unknown {
  const steps = parsePath(path);
  if (steps === null) return undefined;
  const { place } = resolvePath(plan, steps);
  return place === null ? undefined : (place.parent as Record<PropertyKey, unknown>)[place.key];
}
