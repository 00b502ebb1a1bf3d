import { type Fault, nearestWords } from "../../../asked/plan/index.ts";
import { readTable, type Table } from "../../../text/csv/index.ts";
import { time } from "../../../text/units/index.ts";
import { byName } from "./byName.ts";
import { cellPath, columnFault } from "./faultPaths.ts";
import type { RawColumn } from "./rawColumn.ts";
import { isTime, readTime, type TimeCell } from "./readTime.ts";
import { readSubject } from "./subject.ts";
import type { ObservedTime, TimesColumn } from "./timesColumn.ts";

/** Far more than anybody times; a plan takes as many observed values. */
export const MAX_TIMES = 10_000;

export interface TimesOptions {
  /** Unit of columns whose heading names none; null, or left out: they need one. */
  unit?: string | null;
  /** Heading of a column with names, where every row is one time of what it names; null, or left out: one column for each. */
  by?: string | null;
}

export interface TimesReading {
  /** Null when there are faults. */
  columns: TimesColumn[] | null;
  /** Headings of columns that hold no times and were passed over. */
  passedOver: string[];
  faults: Fault[];
}

/**
 * Reads a table of times: one column for each station, its heading "STATION (UNIT)" (see `readSubject` for more than
 * cycle times). A cell is a number; "600+" or ">600" was still going on when the watching stopped. A column headed as
 * another one with " open" behind it says so with yes or no instead. Empty cells are passed over, and so are columns
 * without a unit that hold something else than numbers. Every fault is told, with line and column. Example:
 *
 *     const { columns, faults } = readTimes("skinning (s)\n31.5\n28.2\n");
 */
export function readTimes(text: string, { unit = null, by = null }: TimesOptions = {}): TimesReading {
  const table = readTable(text);
  const faults = tableFaults(table);
  if (faults.length > 0) return { columns: null, passedOver: [], faults };
  const split = by === null ? { columns: rawColumns(table), faults: [] } : byName(table, by);
  if (split.faults.length > 0) return { columns: null, passedOver: [], faults: split.faults };
  return readColumns(split.columns, unit);
}

function tableFaults({ headings, rows }: Table): Fault[] {
  if (headings.length === 0) {
    return [{ path: "", found: "it is empty", allowed: "headings in the first row, times below", remedy: "" }];
  }
  const faults: Fault[] = [];
  headings.forEach((heading, index) => {
    const first = headings.indexOf(heading);
    if (heading === "" && rows.some(({ cells }) => (cells[index] ?? "") !== "")) {
      faults.push(columnFault(`${index + 1}`, "it has no heading", "", "write one in the first row"));
    } else if (heading !== "" && first !== index) {
      faults.push(
        columnFault(heading, `columns ${first + 1} and ${index + 1} have the same heading`, "", "rename one"),
      );
    }
  });
  for (const { line, cells } of rows) {
    if (cells.length <= headings.length || cells.slice(headings.length).every((cell) => cell === "")) continue;
    const found = `${cells.length} cells under ${headings.length} headings`;
    faults.push({ path: `line ${line}`, found, allowed: "", remedy: "is there a comma in a number? Write a point" });
  }
  if (rows.length === 0) faults.push({ path: "", found: "no rows", allowed: "times below the headings", remedy: "" });
  return faults;
}

function rawColumns({ headings, rows }: Table): RawColumn[] {
  return headings
    .map((heading, index) => ({
      heading,
      cells: rows.map(({ line, cells }) => ({ line, text: cells[index] ?? "" })).filter(({ text }) => text !== ""),
    }))
    .filter(({ heading }) => heading !== "");
}

function readColumns(raw: readonly RawColumn[], unit: string | null): TimesReading {
  const headed = raw.map((column) => ({ ...column, ...splitUnit(column.heading) }));
  const openOf = new Map(
    headed.flatMap((column) => {
      const of = headed.find(({ words }) => column.unit === null && column.words === `${words} open`);
      return of === undefined ? [] : [[of.words, column] as const];
    }),
  );
  const marks = new Set([...openOf.values()].map(({ heading }) => heading));
  const reading: TimesReading = { columns: [], passedOver: [], faults: [] };
  for (const column of headed.filter(({ heading }) => !marks.has(heading))) {
    if (column.unit === null && unit === null && mostlyWords(column.cells)) {
      reading.passedOver.push(column.heading);
      continue;
    }
    readColumn(column, column.unit ?? unit, openOf.get(column.words) ?? null, reading);
  }
  if (reading.faults.length === 0 && reading.columns!.length === 0) {
    const allowed = 'columns of times headed with station and unit, such as "skinning (s)"';
    reading.faults.push({ path: "", found: "no column holds times", allowed, remedy: "" });
  }
  return reading.faults.length === 0 ? reading : { ...reading, columns: null };
}

const UNIT = /^(.*?)\s*[([]\s*([^()[\]]*?)\s*[)\]]$/su;

function splitUnit(heading: string): { words: string; unit: string | null } {
  const parts = UNIT.exec(heading);
  return parts === null ? { words: heading, unit: null } : { words: parts[1]!, unit: parts[2]! };
}

function mostlyWords(cells: readonly TimeCell[]): boolean {
  return cells.filter(({ text }) => isTime(text)).length <= cells.length / 2;
}

function readColumn(
  { words, heading, cells }: RawColumn & { words: string },
  unit: string | null,
  marks: RawColumn | null,
  into: TimesReading,
): void {
  const before = into.faults.length;
  into.faults.push(...headingFaults(words, heading, unit));
  const times = cells.flatMap((cell): ObservedTime[] => {
    const reading = readTime(cell, heading);
    if (reading.fault === null) return [reading.time];
    into.faults.push(reading.fault);
    return [];
  });
  if (marks !== null) into.faults.push(...markOpen(times, marks));
  if (cells.length === 0 || cells.length > MAX_TIMES) {
    const allowed = `1 to ${MAX_TIMES} times`;
    into.faults.push(columnFault(heading, `${cells.length} times`, allowed, "fill the column or delete it"));
  }
  if (into.faults.length > before) return;
  into.columns!.push({ heading: words, subject: readSubject(words)!, unit: unit!, times });
}

function headingFaults(words: string, heading: string, unit: string | null): Fault[] {
  const faults: Fault[] = [];
  const units = Object.keys(time.units);
  if (unit === null) {
    const remedy = `write for example "${words} (s)", or add --unit s`;
    faults.push(columnFault(heading, "the heading has no unit of time", `one of ${units.join(", ")}`, remedy));
  } else if (!Object.hasOwn(time.units, unit)) {
    const symbol = Object.hasOwn(time.otherSpellings, unit) ? time.otherSpellings[unit]! : null;
    const remedy = symbol === null ? nearestWords(unit, units, "write one of these") : `did you mean '${symbol}'?`;
    faults.push(columnFault(heading, `'${unit}' is no unit of time`, units.join(", "), remedy));
  }
  if (words === "" || readSubject(words) === null || readSubject(words)!.stage === "") {
    const allowed =
      '"STATION", or after a colon what the times are: "cycle", "travel", "dwell", "NAME uptime", "NAME repair"';
    faults.push(columnFault(heading, "the heading does not say what the times are of", allowed, "rename the column"));
  }
  return faults;
}

const YES = ["yes", "y", "true", "1", "open", "x"];
const NO = ["", "no", "n", "false", "0", "ended"];

/** Takes the yes and no of the column beside it; the lines of the two are those of the file. */
function markOpen(times: ObservedTime[], { heading, cells }: RawColumn): Fault[] {
  const faults: Fault[] = [];
  const byLine = new Map(times.map((each) => [each.line, each]));
  for (const { line, text } of cells) {
    const word = text.toLowerCase();
    const timed = byLine.get(line);
    if (!YES.includes(word) && !NO.includes(word)) {
      faults.push({ path: cellPath(line, heading), found: JSON.stringify(text), allowed: "yes or no", remedy: "" });
    } else if (YES.includes(word) && timed === undefined) {
      faults.push({ path: cellPath(line, heading), found: "no time stands beside it", allowed: "", remedy: "add it" });
    } else if (YES.includes(word)) timed!.open = true;
  }
  return faults;
}
