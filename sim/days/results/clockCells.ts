import { writeClock } from "../../text/units/index.ts";
import { type Column, column } from "./column.ts";

/** Midnight of the date that every simulated day is given, a Monday: a plan names no date. UTC stands for the plant's own time. */
export const MIDNIGHT = Date.UTC(2001, 0, 1);

/** Columns for a moment of the day, `prefix` before their names: as a clock time, and as a date with time. */
export function clockColumns(prefix: string, what: string): Column[] {
  return [
    column(`${prefix}clock`, "text", "", `${what}, hh:mm:ss; hours from 24 on are the next day's.`),
    column(
      `${prefix}date_time`,
      "date-time",
      "",
      `The same as a date with time (ISO 8601, the plant's own time, full seconds). The date is invented: every simulated day begins on 2001-01-01.`,
    ),
  ];
}

/** The cells of those columns; both empty without a moment. */
export function clockCells(secondsAfterMidnight: number | null): [string | null, string | null] {
  const moment = momentOf(secondsAfterMidnight);
  return moment === null ? [null, null] : [clockOf(secondsAfterMidnight!), moment.toISOString().slice(0, 19)];
}

/** The moment on the invented date, to the second. */
export function momentOf(secondsAfterMidnight: number | null): Date | null {
  return secondsAfterMidnight === null ? null : new Date(MIDNIGHT + Math.round(secondsAfterMidnight) * 1000);
}

/** hh:mm:ss; a full minute is written out too, so that all cells are alike. */
export function clockOf(secondsAfterMidnight: number): string {
  const written = writeClock(secondsAfterMidnight);
  return written.split(":").length === 3 ? written : `${written}:00`;
}
