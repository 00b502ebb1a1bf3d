import { readTable } from "../../../text/csv/index.ts";
import { foundWords, type Reading, readQuantity, type UnitFamily } from "../../../text/units/index.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { readNamedFile } from "../readNamedFile.ts";
import type { TextFiles } from "../textFiles.ts";
import { CEILINGS } from "./ceilings.ts";

/** One column of a table of stopwatch values. */
export interface CsvReference {
  csv: string;
  column: string;
  unit: string;
}

/** A row with something in it; `line` counts as a text editor does, the headings being line 1. */
interface FilledRow {
  line: number;
  cell: string;
}

/** Values in SI; a fault names the part of the reference it is about. */
export type CsvReading = Reading<number[]> & { about: keyof CsvReference };

/** Reads one column of a CSV file as `readTable` splits it. */
export function csvColumn(reference: CsvReference, family: UnitFamily, files: TextFiles): CsvReading {
  const unit = readQuantity(family, `1 ${reference.unit}`);
  if (unit.fault !== null) return wrongUnit(reference, family);
  const file = readNamedFile(reference.csv, files, "a file, its path given from the folder of the plan");
  if (file.fault !== null) return { ...file, about: "csv" };
  const { headings, rows } = readTable(file.value);
  const index = headings.indexOf(reference.column.trim());
  if (index === -1) return noSuchColumn(reference.column, headings);
  const filled = rows.map(({ line, cells }) => ({ line, cell: cells[index] ?? "" }));
  return valuesOf(filled, reference, family);
}

function wrongUnit({ unit }: CsvReference, family: UnitFamily): CsvReading {
  const units = Object.keys(family.units);
  const remedy = nearestWords(unit, units, `write for example "${family.si}"`);
  const fault = {
    found: `'${unit}' is not a unit of ${family.name.replace(/^an? /u, "")}`,
    allowed: listWords(units),
    remedy,
  };
  return { value: null, fault, about: "unit" };
}

function noSuchColumn(column: string, columns: readonly string[]): CsvReading {
  const remedy = nearestWords(column, columns, "use a heading from the file's first row");
  return {
    value: null,
    fault: { found: `'${column}' is not a column`, allowed: listWords(columns), remedy },
    about: "column",
  };
}

function valuesOf(rows: readonly FilledRow[], { unit }: CsvReference, family: UnitFamily): CsvReading {
  if (rows.length === 0 || rows.length > CEILINGS.observedValues) return wrongCount(rows.length);
  const readings = rows.map(({ cell }) => readQuantity(family, `${cell.trim()} ${unit}`));
  const bad = rows.filter((_, index) => readings[index]?.fault !== null);
  if (bad[0] === undefined)
    return { value: readings.map((reading) => reading.value as number), fault: null, about: "csv" };
  const more = bad.length === 1 ? "" : ` (and ${bad.length - 1} more row${bad.length === 2 ? "" : "s"} like it)`;
  const found = `row ${bad[0].line} holds ${foundWords(bad[0].cell)}${more}`;
  const allowed = "numbers of 0 or more with a decimal point";
  return { value: null, fault: { found, allowed, remedy: "correct the row or delete it" }, about: "column" };
}

function wrongCount(count: number): CsvReading {
  const allowed = `1 to ${CEILINGS.observedValues} rows below the headings`;
  return { value: null, fault: { found: `${count} rows`, allowed, remedy: "check the file" }, about: "csv" };
}
