import { type Fault, nearestWords, type Plan } from "../../asked/plan/index.ts";
import { type ResponseInfo, responsesOf } from "../../day/observations/index.ts";
import { readTable, type Table } from "../../text/csv/index.ts";
import { foundWords, type Reading, readClock, readQuantity, readShare, time } from "../../text/units/index.ts";
import type { Observed, ObservedQuantity } from "./observed.ts";
import type { Quantity } from "./quantity.ts";

/** A year of days; nobody compares more at a time. */
const MAX_DAYS = 400;
const MAX_QUANTITIES = 100;
const HOUR = 3600;

export interface ObservedReading {
  /** Null when there are faults. */
  observed: Observed | null;
  faults: Fault[];
}

/**
 * Reads observed days: a row for each, a column for each thing that was noted. A heading is a stretch of the day whose
 * heads were counted ("06:00-07:00"; "06:00" is the hour from then), or a response of the plan by key or label ("finish",
 * "End of work on the line"). Cells: whole numbers for counts; clock times, shares, times with a unit or numbers as the
 * response has them. Empty cells were not noted. Columns of words under other headings (the date, remarks) are passed
 * over. Every fault is told, with line and column. Example:
 *
 *     const { observed, faults } = readObserved("06:00-07:00,finish\n312,14:05\n298,14:20\n", plan);
 */
export function readObserved(text: string, plan: Plan): ObservedReading {
  const table = readTable(text);
  const faults: Fault[] = tableFaults(table);
  if (faults.length > 0) return { observed: null, faults };
  const responses = responsesOf(plan);
  const observed: Observed = { lines: table.rows.map(({ line }) => line), quantities: [], passedOver: [] };
  table.headings.forEach((heading, column) => {
    const cells = table.rows.map(({ line, cells }) => ({ line, text: cells[column] ?? "" }));
    const reading = readHeading(heading, plan, responses);
    if (reading.fault !== null) faults.push({ path: columnPath(heading), ...reading.fault });
    else if (reading.value !== null) {
      const read = readColumn(heading, reading.value, cells, plan);
      faults.push(...read.faults);
      if (read.column !== null) observed.quantities.push(read.column);
    } else if (cells.some(({ text }) => text !== "" && !Number.isNaN(Number(text)))) {
      faults.push({ path: columnPath(heading), ...noQuantity(heading, responses) });
    } else observed.passedOver.push(heading);
  });
  faults.push(...wholeFaults(observed, faults.length));
  return faults.length > 0 ? { observed: null, faults } : { observed, faults };
}

function columnPath(heading: string): string {
  return `column "${heading}"`;
}

function tableFaults({ headings, rows }: Table): Fault[] {
  const allowed = 'headings such as "06:00-07:00" and "finish" in the first row, a row for each day below';
  if (headings.length === 0 || rows.length === 0) {
    return [{ path: "", found: headings.length === 0 ? "it is empty" : "no rows", allowed, remedy: "" }];
  }
  const faults: Fault[] = [];
  if (rows.length > MAX_DAYS) {
    faults.push({ path: "", found: `${rows.length} days`, allowed: `${MAX_DAYS} at most`, remedy: "split the file" });
  }
  headings.forEach((heading, index) => {
    if (headings.indexOf(heading) === index) return;
    faults.push({
      path: columnPath(heading),
      found: "two columns have this heading",
      allowed: "",
      remedy: "rename one",
    });
  });
  for (const { line, cells } of rows) {
    if (cells.length <= headings.length || cells.slice(headings.length).every((cell) => cell === "")) continue;
    const found = `${cells.length} cells under ${headings.length} headings`;
    faults.push({ path: `line ${line}`, found, allowed: "", remedy: "is there a comma in a number? Write a point" });
  }
  return faults;
}

const STRETCH = /^(\d{1,2}:\d\d(?::\d\d)?)(?:\s*[-\u2013]\s*(\d{1,2}:\d\d(?::\d\d)?))?$/u;

/** Null where the heading is nothing that can be compared. */
function readHeading(heading: string, plan: Plan, responses: readonly ResponseInfo[]): Reading<Quantity | null> {
  const parts = STRETCH.exec(heading);
  if (parts !== null) return readStretch(heading, parts[1]!, parts[2] ?? null, plan);
  const lower = heading.toLowerCase();
  const info = responses.find(({ key, label }) => key.toLowerCase() === lower || label.toLowerCase() === lower);
  return { value: info === undefined ? null : { kind: "response", label: info.label, info }, fault: null };
}

function readStretch(label: string, from: string, to: string | null, plan: Plan): Reading<Quantity> {
  const start = readClock(from);
  if (start.fault !== null) return start;
  const end = to === null ? { value: start.value + HOUR, fault: null } : readClock(to);
  if (end.fault !== null) return end;
  const zero = plan.day.startClockSeconds;
  if (start.value < zero) {
    const found = "it begins before the plan's day does";
    return {
      value: null,
      fault: { found, allowed: "", remedy: "after midnight go on counting: 25:00 is one o'clock" },
    };
  }
  if (end.value <= start.value) {
    const remedy = "after midnight go on counting: 22:00-25:00";
    return { value: null, fault: { found: "it ends before it begins", allowed: "", remedy } };
  }
  const quantity: Quantity = {
    kind: "count",
    label,
    fromSeconds: start.value - zero,
    toSeconds: end.value - zero,
  };
  return { value: quantity, fault: null };
}

function noQuantity(heading: string, responses: readonly ResponseInfo[]): Omit<Fault, "path"> {
  const keys = responses.map(({ key }) => key);
  return {
    found: "it holds numbers under a heading that is nothing to compare",
    allowed:
      'a stretch of the day ("06:00-07:00") or a response of the plan ("finish", "carcasses", "headsPerHour" ...)',
    remedy: nearestWords(heading, keys, "rename or delete the column"),
  };
}

interface Cell {
  line: number;
  text: string;
}

function readColumn(
  heading: string,
  quantity: Quantity,
  cells: readonly Cell[],
  plan: Plan,
): { column: ObservedQuantity | null; faults: Fault[] } {
  const faults: Fault[] = [];
  const values = cells.map(({ line, text }) => {
    if (text === "") return null;
    const { value, fault } = readValue(text, quantity, plan);
    if (fault !== null) faults.push({ path: `line ${line}, column "${heading}"`, ...fault });
    return value;
  });
  if (faults.length === 0 && values.every((value) => value === null)) {
    faults.push({ path: columnPath(heading), found: "no value", allowed: "", remedy: "fill the column or delete it" });
  }
  return { column: faults.length > 0 ? null : { heading, quantity, values }, faults };
}

function readValue(text: string, quantity: Quantity, plan: Plan): Reading<number> {
  if (quantity.kind === "count") return readNumber(text, "a whole number of heads", (value) => Number.isInteger(value));
  switch (quantity.info.format) {
    case "clock": {
      const clock = readClock(text);
      return clock.fault === null ? { value: clock.value - plan.day.startClockSeconds, fault: null } : clock;
    }
    case "duration":
      return readQuantity(time, text);
    case "share":
      return readShare(/%$/u.test(text) ? text : Number(text));
    default:
      return readNumber(text, `a number with a decimal point (${quantity.info.unit})`, () => true);
  }
}

const NUMBER = /^-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/u;

function readNumber(text: string, allowed: string, fits: (value: number) => boolean): Reading<number> {
  const value = NUMBER.test(text) ? Number(text) : Number.NaN;
  if (Number.isFinite(value) && fits(value)) return { value, fault: null };
  return { value: null, fault: { found: foundWords(text), allowed, remedy: "correct the cell or empty it" } };
}

function wholeFaults({ quantities }: Observed, faultsSoFar: number): Fault[] {
  if (quantities.length > MAX_QUANTITIES) {
    const found = `${quantities.length} columns to compare`;
    return [{ path: "", found, allowed: `${MAX_QUANTITIES} at most`, remedy: "take longer stretches" }];
  }
  if (quantities.length > 0 || faultsSoFar > 0) return [];
  const allowed = 'a column headed with a stretch of the day ("06:00-07:00") or a response of the plan ("finish")';
  return [{ path: "", found: "no column to compare", allowed, remedy: "" }];
}
