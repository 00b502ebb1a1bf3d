import { SECONDS_PER_DAY } from "../../text/units/index.ts";
import type { CsvCell } from "./csvText.ts";
import { looksLikeFormula } from "./looksLikeFormula.ts";

/** A cell of a sheet: as it is, a share from 0 to 1, a time of day in seconds after midnight, a date with its time, or words of a kind. */
export type SheetCell =
  | CsvCell
  | { value: number; as: "share" | "clock" }
  | { date: Date }
  | { words: string; as: "title" | "heading" | "prose" };

/** One sheet of a workbook. */
export interface Sheet {
  /** Shortened and cleaned to what a sheet's name may be; numbered where two would be alike. */
  name: string;
  rows: readonly (readonly SheetCell[])[];
  /** So many rows stay at the top while the others move. */
  frozen: number;
  /** Of the columns, in letters. */
  widths: readonly number[];
}

/** A table whose cells may have a kind of their own. */
export interface SheetTable {
  columns: readonly { name: string; unit: string }[];
  rows: readonly (readonly SheetCell[])[];
}

/**
 * A table as rows of a sheet: a heading with the unit in each name, then the rows. Numbers under "%" become shares, texts
 * like 14:05 become times, so that a spreadsheet can reckon with them.
 */
export function tableRows({ columns, rows }: SheetTable): SheetCell[][] {
  const inPercent = columns.map(({ unit }) => unit === "%");
  const heading = columns.map(({ name, unit }): SheetCell => {
    return { words: unit === "" || unit === "%" ? name : `${name} [${unit}]`, as: "heading" };
  });
  return [heading, ...rows.map((row) => row.map((cell, index) => typed(cell, inPercent[index] ?? false)))];
}

function typed(cell: SheetCell, inPercent: boolean): SheetCell {
  if (typeof cell === "number") return inPercent ? { value: cell / 100, as: "share" } : cell;
  if (typeof cell !== "string") return cell;
  const clock = /^(\d\d):(\d\d)(?::(\d\d))?$/.exec(cell);
  if (clock === null) return cell;
  const [hours, minutes, seconds] = clock.slice(1).map((part) => Number(part ?? 0));
  return { value: hours! * 3600 + minutes! * 60 + seconds!, as: "clock" };
}

/** Widths for a table: as wide as its names, no less than 12 letters and no more than 40. */
export function tableWidths({ columns }: Pick<SheetTable, "columns">): number[] {
  return columns.map(({ name, unit }) => Math.min(40, Math.max(12, name.length + unit.length + 3)));
}

/** Names longer than this, and rows beyond this, cannot be in an Office Open XML workbook (ECMA-376; limits of spreadsheets). */
const LONGEST_NAME = 31;
const MAX_ROWS = 1_048_576;

/**
 * Sheets as an .xlsx file. Numbers stay numbers and texts stay texts, "=1+1" too: no cell is ever a formula. Throws a
 * RangeError for a sheet with more rows than a spreadsheet takes.
 */
export async function workbook(sheets: readonly Sheet[]): Promise<Uint8Array> {
  // Loaded only when somebody wants a workbook.
  const { default: writeExcelFile } = await import("write-excel-file/node");
  const names = sheetNames(sheets);
  const written = sheets.map(({ rows, frozen, widths }, index) => {
    if (rows.length > MAX_ROWS)
      throw new RangeError(`workbook: ${rows.length} rows in "${names[index]}"; a spreadsheet takes ${MAX_ROWS}`);
    return {
      sheet: names[index]!,
      data: rows.map((row) => row.map(cellOf)),
      columns: widths.map((width) => ({ width })),
      stickyRowsCount: frozen,
    };
  });
  return new Uint8Array(await writeExcelFile(written).toBuffer());
}

/** Number formats of ECMA-376: hours may go beyond 24 after midnight; text that is no number, date or formula. */
const FORMATS = { share: "0.0%", clock: "[hh]:mm:ss", date: "yyyy-mm-dd hh:mm", text: "@" } as const;

const STYLES = {
  title: { fontWeight: "bold", fontSize: 14 },
  heading: { fontWeight: "bold", wrap: true },
  prose: { wrap: true, alignVertical: "top" },
} as const;

function cellOf(cell: SheetCell) {
  if (cell === null) return null;
  if (typeof cell === "number") return { value: cell, type: Number };
  if (typeof cell === "string") return textCell(cell);
  if ("words" in cell) return { ...textCell(cell.words), ...STYLES[cell.as] };
  // UTC stands for the plant's own time.
  if ("date" in cell) return { value: cell.date, type: Date, format: FORMATS.date };
  const value = cell.as === "clock" ? cell.value / SECONDS_PER_DAY : cell.value;
  return { value, type: Number, format: FORMATS[cell.as] };
}

/** Text stays text in a workbook; what looks like a formula also where somebody edits it or copies it elsewhere. */
function textCell(text: string) {
  const value = clean(text);
  return { value, type: String, ...(looksLikeFormula(value) ? { format: FORMATS.text } : {}) };
}

/** With "?" for characters that XML cannot hold, and no longer than a cell takes. */
function clean(text: string): string {
  return text.replace(/[^\P{Cc}\t\n\r]|[\uFFFE\uFFFF]|\p{Surrogate}/gu, "?").slice(0, 32_767);
}

function sheetNames(sheets: readonly Sheet[]): string[] {
  const taken = new Set<string>();
  return sheets.map(({ name }) => {
    const stem =
      clean(name)
        .replace(/[[\]:*?/\\]/g, "-")
        .replace(/^'+|'+$/g, "")
        .trim() || "sheet";
    let unique = stem.slice(0, LONGEST_NAME);
    for (let copy = 2; taken.has(unique.toLowerCase()); copy++) {
      const end = ` ${copy}`;
      unique = stem.slice(0, LONGEST_NAME - end.length) + end;
    }
    taken.add(unique.toLowerCase());
    return unique;
  });
}
