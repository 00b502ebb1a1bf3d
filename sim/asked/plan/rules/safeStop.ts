import type { Fault } from "../fault.ts";
import { faultAt, located, namesOf } from "./located.ts";
import { workplacesOf } from "./stages.ts";

/** The stretch that a planned stop keeps empty runs down the line. */
export function safeStop(json: unknown): Fault[] {
  const stretch = located(json, "day", "safeStop");
  if (stretch === null) return [];
  const names = namesOf(workplacesOf(json));
  const from = names.indexOf(String(stretch.value.from));
  const to = names.indexOf(String(stretch.value.to));
  if (from === -1 || to === -1 || from <= to) return [];
  const found = `'${stretch.value.to}' stands before '${stretch.value.from}' in the line`;
  return [faultAt([...stretch.at, "to"], found, "the same stage as from, or a later one", "swap the two")];
}
