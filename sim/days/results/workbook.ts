import type { CsvCell } from "./csvText.ts";

/** One sheet of a workbook: a heading row of names, a row of units where any column has one, then the rows. */
export interface Sheet {
  /** Shortened and cleaned to what a sheet's name may be; numbered where two would be alike. */
  name: string;
  columns: readonly { name: string; unit: string }[];
  rows: readonly (readonly CsvCell[])[];
}

/** Names longer than this, and rows beyond this, cannot be in an Office Open XML workbook (ECMA-376; limits of spreadsheets). */
const LONGEST_NAME = 31;
const MAX_ROWS = 1_048_576;

/**
 * Tables as an .xlsx file. Numbers stay numbers and texts stay texts, "=1+1" too: no cell is ever a formula. Throws a
 * RangeError for a sheet with more rows than a spreadsheet takes.
 */
export async function workbook(sheets: readonly Sheet[]): Promise<Uint8Array> {
  // Loaded only when somebody wants a workbook.
  const { default: writeExcelFile } = await import("write-excel-file/node");
  const names = sheetNames(sheets);
  const written = sheets.map(({ columns, rows }, index) => {
    const heading = headingOf(columns);
    if (rows.length + heading.length > MAX_ROWS)
      throw new RangeError(`workbook: ${rows.length} rows in "${names[index]}"; a spreadsheet takes ${MAX_ROWS}`);
    return {
      sheet: names[index]!,
      data: [...heading, ...rows.map((row) => row.map(cellOf))],
      columns: columns.map(({ name }) => ({ width: Math.min(60, Math.max(12, name.length + 2)) })),
      stickyRowsCount: heading.length,
    };
  });
  return new Uint8Array(await writeExcelFile(written).toBuffer());
}

function headingOf(columns: Sheet["columns"]) {
  const names = columns.map(({ name }) => ({ value: clean(name), type: String, fontWeight: "bold" as const }));
  const units = columns.map(({ unit }) => (unit === "" ? null : { value: clean(unit), type: String }));
  return units.some((unit) => unit !== null) ? [names, units] : [names];
}

function cellOf(cell: CsvCell) {
  if (cell === null) return null;
  return typeof cell === "number" ? { value: cell, type: Number } : { value: clean(cell), type: String };
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
