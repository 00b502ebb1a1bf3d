import type { Fault } from "../../../asked/plan/index.ts";
import { foundWords } from "../../../text/units/index.ts";
import { cellPath } from "./faultPaths.ts";
import type { ObservedTime } from "./timesColumn.ts";

/** One filled cell of a file. */
export interface TimeCell {
  line: number;
  text: string;
}

const TIME = /^(>\s*)?((?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(\+)?$/u;
const ALLOWED = 'numbers of 0 or more with a decimal point, and "600+" for a time that was still going on at 600';

/** Whether a cell holds a time at all. */
export function isTime(text: string): boolean {
  return TIME.test(text);
}

/** Reads "4.2", and "600+" or ">600" as open. */
export function readTime(
  { line, text }: TimeCell,
  heading: string,
): { time: ObservedTime; fault: null } | { fault: Fault } {
  const parts = TIME.exec(text);
  const value = parts === null ? Number.NaN : Number(parts[2]);
  const open = parts !== null && (parts[1] !== undefined || parts[3] !== undefined);
  if (Number.isFinite(value) && !(open && value === 0)) return { time: { value, open, line }, fault: null };
  const path = cellPath(line, heading);
  return { fault: { path, found: foundWords(text), allowed: ALLOWED, remedy: remedyFor(text) } };
}

function remedyFor(text: string): string {
  if (/^\d+,\d+\+?$/u.test(text)) return "write a decimal point";
  if (/^\d+:\d\d/u.test(text)) return "write it as one number in the unit of the heading";
  if (/^[\d.]+\s*[a-z]+$/iu.test(text)) return "the unit stands in the heading only";
  return "correct the cell or empty it";
}
