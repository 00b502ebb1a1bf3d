import type { Fault } from "./fault.ts";
import { findJsonFault } from "./findJsonFault.ts";

export type ParsedJson = { value: unknown; fault: null } | { value: null; fault: Fault };

/**
 * Reads JSON text. The first thing that is wrong is told with its line and column (counted from 1, in characters); a key
 * that appears twice in one object is wrong too, because one of the two values would be lost. A byte order mark is skipped.
 */
export function parseJson(text: string): ParsedJson {
  const json = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const flaw = findJsonFault(json);
  if (flaw === null) return { value: JSON.parse(json), fault: null };
  const { offset, ...words } = flaw;
  return { value: null, fault: { path: lineAndColumn(json, offset), ...words } };
}

function lineAndColumn(text: string, offset: number): string {
  const before = text.slice(0, offset).split(/\r\n|\r|\n/u);
  return `line ${before.length}, column ${[...(before.at(-1) as string)].length + 1}`;
}
