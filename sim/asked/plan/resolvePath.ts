import type { Fault } from "./fault.ts";
import { formatPath } from "./formatPath.ts";
import { isRecord } from "./isRecord.ts";
import { listWords } from "./listWords.ts";
import { nearestWords } from "./nearestName.ts";
import type { PathStep } from "./parsePath.ts";

type Finding = Pick<Fault, "found" | "allowed" | "remedy">;

/** The place a path leads to: the object or array that holds it, and its key or index there. */
export interface Place {
  parent: Record<string, unknown> | unknown[];
  key: string | number;
}

export type Resolved = { place: Place; fault: null } | { place: null; fault: Finding };

/**
 * Follows a path through a JSON document. Elements of arrays are found by index or by their `name` (removals: by `as`, diversions: by `to`).
 * The last key of an object need not exist yet; every other step must.
 */
export function resolvePath(json: unknown, steps: readonly PathStep[]): Resolved {
  let at: unknown = json;
  for (const [depth, step] of steps.entries()) {
    const last = depth === steps.length - 1;
    const here = stepInto(at, step, steps.slice(0, depth), last);
    if (here.fault !== null || last) return here;
    at = (here.place.parent as Record<PropertyKey, unknown>)[here.place.key];
  }
  return { place: null, fault: { found: "the path is empty", allowed: "a path into the plan", remedy: "" } };
}

function stepInto(at: unknown, step: PathStep, before: readonly PathStep[], last: boolean): Resolved {
  if (Array.isArray(at)) return elementOf(at, step, before);
  if (!isRecord(at)) return nothingInside(before);
  if (typeof step === "number") return { place: null, fault: notAList(step, before) };
  if (Object.hasOwn(at, step) || (last && !(step in Object.prototype)))
    return { place: { parent: at, key: step }, fault: null };
  return { place: null, fault: noSuch(step, "key", Object.keys(at), before) };
}

function elementOf(list: unknown[], step: PathStep, before: readonly PathStep[]): Resolved {
  const index = typeof step === "number" ? step : list.findIndex((element) => elementName(element) === step);
  if (index >= 0 && index < list.length) return { place: { parent: list, key: index }, fault: null };
  if (typeof step === "number") return { place: null, fault: pastTheEnd(step, list.length, before) };
  const names = list.map(elementName).filter((name) => name !== null);
  return { place: null, fault: noSuch(step, "name", names, before) };
}

function elementName(element: unknown): string | null {
  if (!isRecord(element)) return null;
  const name = element.name ?? element.as ?? element.to;
  return typeof name === "string" ? name : null;
}

function noSuch(step: string, what: "key" | "name", names: readonly string[], before: readonly PathStep[]): Finding {
  return {
    found: `'${step}' is not a ${what} in ${placeWords(before)}`,
    allowed: listWords(names),
    remedy: nearestWords(step, names, "write one of these"),
  };
}

function pastTheEnd(index: number, length: number, before: readonly PathStep[]): Finding {
  const allowed = length === 0 ? "none, it is empty" : `[0] to [${length - 1}]`;
  return { found: `[${index}] is past the end of ${placeWords(before)}`, allowed, remedy: "counting begins at 0" };
}

function notAList(index: number, before: readonly PathStep[]): Finding {
  return { found: `[${index}] counts into ${placeWords(before)}, which is not a list`, allowed: "a key", remedy: "" };
}

function nothingInside(before: readonly PathStep[]): Resolved {
  const found = `${placeWords(before)} has nothing inside`;
  const remedy = "shorten the path and give the whole value";
  return { place: null, fault: { found, allowed: "a path that ends there or before", remedy } };
}

function placeWords(steps: readonly PathStep[]): string {
  return steps.length === 0 ? "the plan" : `'${formatPath(steps)}'`;
}
