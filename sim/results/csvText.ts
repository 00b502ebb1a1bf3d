import { csvFormatRows } from "d3";

/** A cell: text, a number, or null for "no value" (an empty cell, never 0). */
export type Cell = string | number | null;

/**
 * CSV after RFC 4180 with "\n" line ends, header first. Numbers are written in full. Text that a spreadsheet would take
 * for a formula (it begins with = + - @, tab or carriage return) gets an apostrophe in front, so that a name from
 * someone else's plan cannot run anything when the file is opened.
 */
export function csvText(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const lines = [header, ...rows].map((row) => row.map(cellText));
  return `${csvFormatRows(lines)}\n`;
}

function cellText(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  return /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
}
