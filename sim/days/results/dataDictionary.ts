import { type Column, column } from "./column.ts";
import { csvText, headerOf } from "./csvText.ts";
import { recordsStops, STOPS_COLUMNS, STOPS_ROW } from "./stopsCsv.ts";
import type { ResponseInfo, StudyResults } from "./studyResults.ts";
import { summaryColumns } from "./summaryCsv.ts";
import { TRACES_COLUMNS } from "./tracesCsv.ts";
import { hasValuesCsv, valuesColumns } from "./valuesCsv.ts";
import { fileOf, weekTables } from "./weekTables.ts";

/** What every column of every table of a run holds, and what every response means. */
export interface DataDictionary {
  tables: { file: string; row: string; columns: Column[] }[];
  responses: { key: string; unit: string; description: string }[];
}

/** Made from the columns that the tables are written with, so that the two cannot disagree. */
export function dataDictionary(results: StudyResults): DataDictionary {
  const value = "one value: of one variant, one day (replication), one response";
  const traced = results.variants.some(({ day }) => day.traces !== null);
  return {
    tables: [
      { file: "summary.csv", row: "one variant and response", columns: summaryColumns(results.factors) },
      ...(hasValuesCsv(results) ? [{ file: "values.csv", row: value, columns: valuesColumns(results.factors) }] : []),
      { file: "values.parquet", row: value, columns: valuesColumns(results.factors) },
      ...(traced ? [{ file: "traces.csv", row: TRACE_ROW, columns: TRACES_COLUMNS }] : []),
      ...(recordsStops(results) ? [{ file: "stops.csv", row: STOPS_ROW, columns: STOPS_COLUMNS }] : []),
      ...weekTables(results).map(({ name, row, columns }) => ({ file: fileOf(name), row, columns })),
      { file: "data-dictionary.csv", row: "one column of a table, or one response", columns: DICTIONARY_COLUMNS },
    ],
    responses: results.responses.map((info) => ({ key: info.key, unit: info.unit, description: responseWords(info) })),
  };
}

const TRACE_ROW =
  "one step or one bin of a trace of the first day (replication 0) of a variant whose day is kept whole";

const DICTIONARY_COLUMNS = [
  column("file", "text", "", "The table that the row is about."),
  column("column", "text", "", "Its column."),
  column("response", "text", "", "The response that the row is about; empty in rows about a column as a whole."),
  column("type", "text", "", "What a cell holds: text, number, whole number, yes or no, date-time."),
  column("unit", "text", "", "Unit of the numbers; empty where there is none."),
  column("description", "text", "", "What it means."),
];

/** The dictionary as a table: first every column of every table, then every response as a value of the table of values. */
export function dictionaryCsv({ tables, responses }: DataDictionary): string {
  const values = tables.some(({ file }) => file === "values.csv") ? "values.csv" : "values.parquet";
  return csvText(headerOf(DICTIONARY_COLUMNS), [
    ...tables.flatMap(({ file, columns }) =>
      columns.map(({ name, type, unit, description }) => [file, name, null, type, unit, description]),
    ),
    ...responses.map(({ key, unit, description }) => [values, "value", key, "number", unit, description]),
  ]);
}

const FORMATS: Record<ResponseInfo["format"], string> = {
  number: "",
  clock: "a time of day, as seconds after the day's start",
  share: "a share from 0 to 1",
  duration: "a length of time",
};

function responseWords({ label, meaning, format, better }: ResponseInfo): string {
  const wanted = better === null ? "" : `${better} is better`;
  const more = [FORMATS[format], wanted].filter((words) => words !== "").join("; ");
  const words = more === "" ? label : `${label} (${more})`;
  return meaning === undefined ? words : `${words}. ${meaning}`;
}
