import { parquetWriteBuffer } from "hyparquet-writer";
import { clockCells, momentOf } from "./clockCells.ts";
import { headerOf } from "./csvText.ts";
import type { StudyResults } from "./studyResults.ts";
import { type ValueRow, valueRows } from "./valueRows.ts";
import { valuesColumns } from "./valuesCsv.ts";

/**
 * Every single value as an Apache Parquet file: the rows and columns of values.csv, with text as it is (no apostrophes:
 * nothing opens the file as a sheet of formulas), moments as timestamps and null where a day has no value. The same
 * results give the same bytes.
 */
export function valuesParquet(results: StudyResults): Uint8Array {
  // Column by column, never all rows at once: a study of thousands of variants has millions of values.
  const of = <Cell>(read: (row: ValueRow) => Cell): Cell[] => Array.from(valueRows(results), read);
  const text = (read: (row: ValueRow) => string) => ({ type: "STRING", nullable: false, data: of(read) }) as const;
  const orNull = (read: (row: ValueRow) => string | null) =>
    ({ type: "STRING", nullable: true, data: of(read) }) as const;
  const columns = [
    text(({ variant }) => variant),
    ...results.factors.map((_, index) => orNull(({ levels }) => levels[index]!)),
    { type: "INT32", nullable: false, data: of(({ replication }) => replication) } as const,
    text(({ response }) => response),
    text(({ unit }) => unit),
    { type: "DOUBLE", nullable: true, data: of(({ value }) => value) } as const,
    orNull(({ clockSeconds }) => clockCells(clockSeconds)[0]),
    { type: "TIMESTAMP", nullable: true, data: of(({ clockSeconds }) => momentOf(clockSeconds)) } as const,
  ];
  const names = headerOf(valuesColumns(results.factors));
  const bytes = parquetWriteBuffer({
    columnData: columns.map((column, index) => ({ name: names[index]!, ...column })),
    createdBy: "gambrel",
    kvMetadata: [
      { key: "study", value: results.study.name },
      { key: "command", value: results.study.command },
    ],
  });
  return new Uint8Array(bytes);
}
