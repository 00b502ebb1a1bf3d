import type { Factor } from "../../asked/study/index.ts";
import { clockCells, clockColumns } from "./clockCells.ts";
import { type Column, column, RESPONSE_COLUMN, UNIT_COLUMN, UNIT_OF_ROW, VARIANT_COLUMN } from "./column.ts";
import { type CsvCell, csvParts, headerOf } from "./csvText.ts";
import { factorColumn } from "./factorColumn.ts";
import type { StudyResults } from "./studyResults.ts";
import { valueRows } from "./valueRows.ts";

/** Columns of values.csv: one for each factor of the study among them, named as in summary.csv. */
export function valuesColumns(factors: readonly Factor[]): Column[] {
  return [
    VARIANT_COLUMN,
    ...factors.map(factorColumn),
    column(
      "replication",
      "whole number",
      "",
      "Number of the day, from 0; the same number has the same luck in every variant.",
    ),
    RESPONSE_COLUMN,
    UNIT_COLUMN,
    column("value", "number", UNIT_OF_ROW, "Value of the response on that day; empty where the day has none."),
    ...clockColumns("", "The value where it is a time of day"),
  ];
}

/** About 9 MB. */
const MAX_ROWS = 100_000;

/** Whether a run has the table of its values as text: a longer one is in values.parquet alone, in a fifteenth of the room. */
export function hasValuesCsv({ responses, variants }: Pick<StudyResults, "responses" | "variants">): boolean {
  const days = variants.reduce((sum, variant) => sum + variant.days, 0);
  return days * responses.length <= MAX_ROWS;
}

/** Every single value, in parts: one row per variant, replication and response; an empty cell where there is none. */
export function valuesCsv(results: StudyResults): Generator<string> {
  return csvParts(headerOf(valuesColumns(results.factors)), cells(results));
}

function* cells(results: StudyResults): Generator<CsvCell[]> {
  for (const { variant, levels, replication, response, unit, value, clockSeconds } of valueRows(results)) {
    yield [variant, ...levels, replication, response, unit, value, ...clockCells(clockSeconds)];
  }
}
