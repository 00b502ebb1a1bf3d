import { csvFormatRow } from "d3";
import type { Column } from "./column.ts";
import { looksLikeFormula } from "./looksLikeFormula.ts";

/** A cell: text, a number, or null for "no value" (an empty cell, never 0). */
export type CsvCell = string | number | null;

const ROWS_PER_PART = 2000;

/**
 * CSV after RFC 4180 with "\n" line ends, header first. Numbers are written in full. Text that a spreadsheet might take
 * for a formula (`looksLikeFormula`) gets an apostrophe in front, so that a name from someone else's plan cannot run
 * anything when the file is opened.
 */
export function csvText(header: readonly string[], rows: Iterable<readonly CsvCell[]>): string {
  return [...csvParts(header, rows)].join("");
}

/** The same in parts of many rows each: a table can be longer than one text may be. */
export function* csvParts(header: readonly string[], rows: Iterable<readonly CsvCell[]>): Generator<string> {
  let lines = [csvFormatRow(header.map(cellText))];
  for (const row of rows) {
    lines.push(csvFormatRow(row.map(cellText)));
    if (lines.length < ROWS_PER_PART) continue;
    yield `${lines.join("\n")}\n`;
    lines = [];
  }
  if (lines.length > 0) yield `${lines.join("\n")}\n`;
}

/** The header of a table. */
export function headerOf(columns: readonly Column[]): string[] {
  return columns.map(({ name }) => name);
}

function cellText(cell: CsvCell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  return looksLikeFormula(cell) ? `'${cell}` : cell;
}
