import { parquetWriteBuffer } from "hyparquet-writer";
import type { StudyResults } from "./studyResults.ts";
import { valueRows } from "./valueRows.ts";

/**
 * Every single value as an Apache Parquet file: the rows and columns of values.csv, with text as it is (no apostrophes:
 * nothing opens the file as a sheet of formulas) and null where a day has no value. The same results give the same bytes.
 */
export function valuesParquet(results: StudyResults): Uint8Array {
  const rows = [...valueRows(results)];
  const bytes = parquetWriteBuffer({
    columnData: [
      { name: "variant", type: "STRING", nullable: false, data: rows.map(({ variant }) => variant) },
      { name: "replication", type: "INT32", nullable: false, data: rows.map(({ replication }) => replication) },
      { name: "response", type: "STRING", nullable: false, data: rows.map(({ response }) => response) },
      { name: "unit", type: "STRING", nullable: false, data: rows.map(({ unit }) => unit) },
      { name: "value", type: "DOUBLE", nullable: true, data: rows.map(({ value }) => value) },
    ],
    createdBy: "gambrel",
    kvMetadata: [
      { key: "study", value: results.study.name },
      { key: "command", value: results.study.command },
    ],
  });
  return new Uint8Array(bytes);
}
