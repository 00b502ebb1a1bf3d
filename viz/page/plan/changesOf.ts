import { parsePath, resolvePath } from "../../../sim/asked/plan/index.ts";
import type { Control, Moves } from "./control.ts";

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
export function valueAt(plan: unknown, path: string): unknown {
  const steps = parsePath(path);
  if (steps === null) return undefined;
  const { place } = resolvePath(plan, steps);
  return place === null ? undefined : (place.parent as Record<PropertyKey, unknown>)[place.key];
}
