import { column, RESPONSE_COLUMN, UNIT_COLUMN, UNIT_OF_ROW, VARIANT_COLUMN } from "./column.ts";
import { csvParts, headerOf } from "./csvText.ts";
import type { StudyResults } from "./studyResults.ts";
import { valueRows } from "./valueRows.ts";

export const VALUES_COLUMNS = [
  VARIANT_COLUMN,
  column(
    "replication",
    "whole number",
    "",
    "Number of the day, from 0; the same number has the same luck in every variant.",
  ),
  RESPONSE_COLUMN,
  UNIT_COLUMN,
  column("value", "number", UNIT_OF_ROW, "Value of the response on that day; empty where the day has none."),
];

/** Every single value, in parts: one row per variant, replication and response; an empty cell where there is none. */
export function valuesCsv(results: StudyResults): Generator<string> {
  return csvParts(headerOf(VALUES_COLUMNS), cells(results));
}

function* cells(results: StudyResults): Generator<(string | number | null)[]> {
  for (const { variant, replication, response, unit, value } of valueRows(results)) {
    yield [variant, replication, response, unit, value];
  }
}
