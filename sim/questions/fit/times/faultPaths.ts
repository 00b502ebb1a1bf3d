import type { Fault } from "../../../asked/plan/index.ts";

/** Where a cell stands, as messages say it. */
export function cellPath(line: number, heading: string): string {
  return `line ${line}, column "${heading}"`;
}

/** A fault of a column as a whole. */
export function columnFault(heading: string, found: string, allowed: string, remedy: string): Fault {
  return { path: `column "${heading}"`, found, allowed, remedy };
}
