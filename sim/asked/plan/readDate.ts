import { foundWords, type Reading, read, refused } from "../../text/units/index.ts";

/** A day of the calendar as ISO 8601 writes it, "2031-03-17". */
export function readDate(written: unknown): Reading<string> {
  const allowed = "a date as year-month-day";
  const remedy = 'write for example "2031-03-17"';
  if (typeof written !== "string" || !/^\d{4}-\d\d-\d\d$/.test(written))
    return refused(`${foundWords(written)} is not a date`, allowed, remedy);
  const date = new Date(`${written}T00:00:00Z`);
  const isReal = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(written);
  return isReal ? read(written) : refused(`there is no ${written}`, allowed, remedy);
}
