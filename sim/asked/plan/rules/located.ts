import type { Fault } from "../fault.ts";
import { formatPath } from "../formatPath.ts";
import { isRecord } from "../isRecord.ts";

type Steps = readonly (string | number)[];

/** An object of the file as written, and where it stands. */
export interface Located {
  at: Steps;
  value: Record<string, unknown>;
}

/**
 * The rules look at the file as written, not at what the schema made of it, so that they can speak for the sound parts
 * of a file that is wrong elsewhere. What is not there or of the wrong kind is passed over: the schema has told of it.
 */
export function located(json: unknown, ...at: Steps): Located | null {
  const value = valueAt(json, at);
  return isRecord(value) ? { at, value } : null;
}

/** The objects in the list that stands there. */
export function locatedList(json: unknown, ...at: Steps): Located[] {
  const list = valueAt(json, at);
  if (!Array.isArray(list)) return [];
  return list.flatMap((value, index) => (isRecord(value) ? [{ at: [...at, index], value }] : []));
}

/** The texts in the list that stands there, with their places. */
export function locatedTexts(json: unknown, ...at: Steps): { at: Steps; text: string }[] {
  const list = valueAt(json, at);
  if (!Array.isArray(list)) return [];
  return list.flatMap((text, index) => (typeof text === "string" ? [{ at: [...at, index], text }] : []));
}

export function namesOf(list: readonly Located[]): string[] {
  return list.map(({ value }) => value.name).filter((name) => typeof name === "string");
}

export function faultAt(at: Steps, found: string, allowed: string, remedy: string): Fault {
  return { path: formatPath(at), found, allowed, remedy };
}

function valueAt(json: unknown, at: Steps): unknown {
  let value = json;
  for (const step of at) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}
