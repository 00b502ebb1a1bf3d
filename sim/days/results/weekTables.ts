import type { DayRecord } from "../../day/engine/index.ts";
import { SECONDS_PER_DAY } from "../../text/units/index.ts";
import { MIDNIGHT } from "./clockCells.ts";
import { type Column, column, VARIANT_COLUMN } from "./column.ts";
import { type CsvCell, csvText, headerOf } from "./csvText.ts";
import type { StudyResults, VariantResults, WeekOutline } from "./studyResults.ts";

/** A cell: as in any table, or a moment in seconds after midnight of the first day, null where it never came. */
export type WeekCell = CsvCell | { moment: number | null };

/** A table about the first simulated week of each variant whose week is kept whole; `weeks` about the days of all of them. */
export interface WeekTable {
  name: "days" | "lots" | "orders" | "weeks";
  /** What one row is. */
  row: string;
  columns: Column[];
  rows: WeekCell[][];
}
const KG = "kg";
const HEADS = "heads";

/** Days, lots and orders of the week; a table without rows is left out. None where the plan has no week. */
export function weekTables(results: StudyResults): WeekTable[] {
  const week = results.plan.week;
  if (week === undefined) return [];
  const tables = [
    daysTable(results.variants, week),
    lotsTable(results.variants),
    ordersTable(results.variants),
    weeksTable(results, week),
  ];
  return tables.filter(({ rows }) => rows.length > 0);
}

/** The same as files: week.csv, lots.csv, orders.csv, weeks.csv. */
export function weekCsvs(results: StudyResults): { path: string; text: string }[] {
  return weekTables(results).map(({ name, columns, rows }) => ({
    path: fileOf(name),
    text: csvText(
      headerOf(columns),
      rows.map((row) => row.map((cell) => csvCell(cell, results.plan.week!))),
    ),
  }));
}

export function fileOf(name: WeekTable["name"]): string {
  return name === "days" ? "week.csv" : `${name}.csv`;
}

function csvCell(cell: WeekCell, week: WeekOutline): CsvCell {
  if (cell === null || typeof cell !== "object") return cell;
  return cell.moment === null ? null : weekMoment(week, cell.moment).toISOString().slice(0, 19);
}

/** A moment on the calendar, to the second; UTC stands for the plant's own time. Without a date the week begins on 2001-01-01, a Monday. */
export function weekMoment({ begins }: WeekOutline, seconds: number): Date {
  const midnight = begins === null ? MIDNIGHT : Date.parse(`${begins}T00:00:00Z`);
  return new Date(midnight + Math.round(seconds) * 1000);
}

function moments(name: string, what: string): Column {
  const words = `${what} (ISO 8601, the plant's own time, full seconds). A plan that does not say when its week begins gets the invented date 2001-01-01 for its first day.`;
  return column(name, "date-time", "", words);
}

const DAYS_COLUMNS = [
  VARIANT_COLUMN,
  column("day", "text", "", "Name of the day, as the plan has it."),
  column("counted", "yes or no", "", "No: a day of the warm-up, left out of every result."),
  moments("starts_date_time", "Start of the day's clock"),
  moments("last_shift_ends_date_time", "End of its last shift"),
  moments("work_ends_date_time", "End of the last work"),
  column(
    "overtime_s",
    "number",
    "s",
    "From the end of the last shift to the end of the last work; 0 when work ended before.",
  ),
  column("from_before_lairage_heads", "whole number", HEADS, "In crates, left by the day before."),
  column("from_before_line_heads", "whole number", HEADS, "On the line, left by the day before: in a chiller."),
  column("hung_heads", "whole number", HEADS, "Heads hung on the day."),
  column("carcasses", "whole number", HEADS, "Carcasses that left on the day."),
  column("carcass_kg", "number", KG, "Their weight."),
  column("left_lairage_heads", "whole number", HEADS, "In crates, left for the next day."),
  column("left_line_heads", "whole number", HEADS, "On the line, left for the next day."),
];

function daysTable(variants: readonly VariantResults[], week: WeekOutline): WeekTable {
  const rows = variants.flatMap(({ name, day }) =>
    (day.week?.days ?? []).map((each) => [name, ...dayCells(each, week)]),
  );
  return { name: "days", row: "one day of work of the first simulated week", columns: DAYS_COLUMNS, rows };
}

function dayCells(day: DayRecord, { days }: WeekOutline): WeekCell[] {
  const index = day.replication % days.length;
  const start = index * SECONDS_PER_DAY + day.startClockSeconds;
  const { name, counted } = days[index]!;
  const { fromBefore, hung, out, inLairage, onLine } = day.heads;
  return [
    ...[name, counted ? "yes" : "no"],
    ...[0, day.shiftEndSeconds, day.workFinishSeconds].map((seconds) => ({ moment: start + seconds })),
    thousandth(Math.max(0, day.workFinishSeconds - day.shiftEndSeconds)),
    ...[fromBefore.inLairage, fromBefore.onLine, hung, out.carcass ?? 0],
    thousandth(day.masses.outKg.carcass ?? 0),
    ...[inLairage, onLine],
  ];
}

const WEEKS_COLUMNS = [
  VARIANT_COLUMN,
  column("week", "whole number", "", "Number of the simulated week, from 1."),
  column("day", "text", "", "Name of the day, as the plan has it; days of the warm-up are left out."),
  moments("work_ends_date_time", "End of the last work; empty behind a day that did not end"),
  column("overtime_with_cleaning_s", "number", "s", "From the end of the last shift to the end of the last work, cleaning after it included."),
  column("carcasses", "whole number", HEADS, "Carcasses that left on the day."),
  column("left_lairage_heads", "whole number", HEADS, "In crates, left for the next day."),
];

/** Of the results that a study of weeks keeps; none where it was asked for others. */
function weeksTable({ variants }: StudyResults, { days }: WeekOutline): WeekTable {
  const counted = days.flatMap(({ name, counted }, index) => (counted ? [{ name, index }] : []));
  const rows = variants.flatMap(({ name: variant, values, day: { startClockSeconds } }) =>
    (values[`${counted[0]?.name}.finish`] ?? []).flatMap((_, week) =>
      counted.map(({ name, index }): WeekCell[] => {
        const of = (key: string) => values[`${name}.${key}`]?.[week] ?? null;
        const end = of("finish");
        const moment = end === null ? null : index * SECONDS_PER_DAY + startClockSeconds + end;
        const overtime = of("overtime");
        return [
          ...[variant, week + 1, name, { moment }],
          ...[overtime === null ? null : thousandth(overtime), of("carcasses"), of("leftInLairage")],
        ];
      }),
    ),
  );
  return { name: "weeks", row: "one day of one simulated week", columns: WEEKS_COLUMNS, rows };
}

const LOT_COLUMNS = [
  VARIANT_COLUMN,
  column("lot", "whole number", "", "Number of the lot, as on the week board."),
  column("name", "text", "", "Name of the load, as the plan has it."),
  moments("due_date_time", "When it was due"),
  moments("arrived_date_time", "When it came; empty when it did not"),
  moments("first_hung_date_time", "First head hung"),
  moments("last_hung_date_time", "Last head hung so far"),
  moments("last_out_date_time", "Last head off the line, chiller included"),
  column("waited_s", "number", "s", "From arrival to the first head hung."),
  column("brought_heads", "whole number", HEADS, "Heads of the load."),
  column("hung_heads", "whole number", HEADS, "Of these, hung."),
  column("live_kg", "number", KG, "Live weight of the heads hung."),
];

function lotsTable(variants: readonly VariantResults[]): WeekTable {
  const lots = variants.flatMap(({ name, day }) => (day.week?.lots ?? []).map((lot, index) => ({ name, lot, index })));
  const ways = [...new Set(lots.flatMap(({ lot }) => Object.keys(lot.out)))];
  const columns = [
    ...LOT_COLUMNS,
    ...ways.flatMap((way) => [
      column(`out_${way.replaceAll(/\s+/g, "_")}_heads`, "whole number", HEADS, `Heads that left as: ${way}.`),
      column(`out_${way.replaceAll(/\s+/g, "_")}_kg`, "number", KG, `Kilograms that left with them: ${way}.`),
    ]),
  ];
  const rows = lots.map(({ name, lot, index }): WeekCell[] => {
    const { arrivedSeconds: arrived, firstHungSeconds: first } = lot;
    const times = [lot.dueSeconds, arrived, first, lot.lastHungSeconds, lot.lastOutSeconds];
    return [
      ...[name, index + 1, lot.name],
      ...times.map((moment) => ({ moment })),
      arrived === null || first === null ? null : thousandth(first - arrived),
      ...[lot.heads, lot.hung, thousandth(lot.liveKg)],
      ...ways.flatMap((way) => [lot.out[way] ?? 0, thousandth(lot.outKg[way] ?? 0)]),
    ];
  });
  return {
    name: "lots",
    row: "one load of the first simulated week, from its arrival to its last head out",
    columns,
    rows,
  };
}

const ORDER_COLUMNS = [
  VARIANT_COLUMN,
  column("order", "text", "", "Name of the order, as the plan has it."),
  moments("due_date_time", "When it is due"),
  column("wanted", "number", "as the column unit says", "How much is wanted."),
  column("missing", "number", "as the column unit says", "How much of it was missing when it was due."),
  column("unit", "text", "", "carcasses or kg."),
  moments("filled_date_time", "When it was filled; empty when it was not"),
];

function ordersTable(variants: readonly VariantResults[]): WeekTable {
  const rows = variants.flatMap(({ name, day }) =>
    (day.week?.orders ?? []).map((order): WeekCell[] => [
      ...[name, order.name],
      { moment: order.bySeconds },
      ...[order.carcasses ?? order.kilograms, thousandth(order.short)],
      order.carcasses === null ? "kg" : "carcasses",
      { moment: order.filledSeconds },
    ]),
  );
  return { name: "orders", row: "one order in the first simulated week", columns: ORDER_COLUMNS, rows };
}

function thousandth(value: number): number {
  return Math.round(value * 1000) / 1000;
}
