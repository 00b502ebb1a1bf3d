import { parquetWriteBuffer } from "hyparquet-writer";
import type { StudyResults } from "./studyResults.ts";
import { type ValueRow, valueRows } from "./valueRows.ts";

/**
 * Every single value as an Apache Parquet file: the rows and columns of values.csv, with text as it is (no apostrophes:
 * nothing opens the file as a sheet of formulas) and null where a day has no value. The same results give the same bytes.
 */
export function valuesParquet(results: StudyResults): Uint8Array {
  const { variant, replication, response, unit, value } = columnsOf(results);
  const bytes = parquetWriteBuffer({
    columnData: [
      { name: "variant", type: "STRING", nullable: false, data: variant },
      { name: "replication", type: "INT32", nullable: false, data: replication },
      { name: "response", type: "STRING", nullable: false, data: response },
      { name: "unit", type: "STRING", nullable: false, data: unit },
      { name: "value", type: "DOUBLE", nullable: true, data: value },
    ],
    createdBy: "gambrel",
    kvMetadata: [
      { key: "study", value: results.study.name },
      { key: "command", value: results.study.command },
    ],
  });
  return new Uint8Array(bytes);
}

type Columns = { [Name in keyof ValueRow]: ValueRow[Name][] };

/** Columns, not rows: a study of thousands of variants has millions of values. */
function columnsOf(results: StudyResults): Columns {
  const columns: Columns = { variant: [], replication: [], response: [], unit: [], value: [] };
  for (const row of valueRows(results)) {
    columns.variant.push(row.variant);
    columns.replication.push(row.replication);
    columns.response.push(row.response);
    columns.unit.push(row.unit);
    columns.value.push(row.value);
  }
  return columns;
}
