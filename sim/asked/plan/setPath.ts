import type { Fault } from "./fault.ts";
import { parsePath } from "./parsePath.ts";
import { resolvePath } from "./resolvePath.ts";

/**
 * Sets one value in a plan's JSON, in place; gives the fault when the path leads nowhere, and then changes nothing.
 * The last key need not exist yet: whether the plan may have it is for the plan's own check.
 */
export function setPathInPlace(json: unknown, path: string, value: unknown): Fault | null {
  const steps = parsePath(path);
  if (steps === null) return noPath(path);
  const { place, fault } = resolvePath(json, steps);
  if (fault !== null) return { path, ...fault };
  (place.parent as Record<PropertyKey, unknown>)[place.key] = structuredClone(value);
  return null;
}

/** The fault of a text that cannot be read as a path. */
export function noPath(path: string): Fault {
  const remedy = 'put names with dots or brackets in [""], such as line["cut no. 2"].positions';
  return {
    path,
    found: "this is not a path",
    allowed: 'keys, names and [indexes], such as "line.skinning.buffer"',
    remedy,
  };
}
