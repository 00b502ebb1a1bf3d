import { parquetMetadata, parquetReadObjects } from "hyparquet";
import { describe, expect, it } from "vitest";
import { clockCells } from "../../../../sim/days/results/clockCells.ts";
import { valueRows } from "../../../../sim/days/results/valueRows.ts";
import { valuesColumns } from "../../../../sim/days/results/valuesCsv.ts";
import { valuesParquet } from "../../../../sim/days/results/valuesParquet.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

/** Checked against a reader of its own making, after the format of the Apache Parquet project. */
describe("valuesParquet", () => {
  const bytes = valuesParquet(handMadeResults());
  const file = bytes.buffer as ArrayBuffer;

  it("holds every value with its variant, day, response and unit, to the bit, null where there is none", async () => {
    const rows = await parquetReadObjects({ file });
    const expected = [...valueRows(handMadeResults())].map(({ levels: [people], clockSeconds, ...row }) => {
      const [clock, written] = clockCells(clockSeconds);
      const { variant, ...rest } = row;
      const moment = written === null ? null : new Date(`${written}Z`);
      return { variant, "factor: people": people, ...rest, clock, date_time: moment };
    });
    expect(rows).toEqual(expected);
    expect(rows.filter(({ date_time }) => date_time !== null)).toHaveLength(6);
    expect(rows.filter(({ value }) => value === null)).toHaveLength(6);
  });

  it("has the columns of values.csv, with the types a notebook expects", () => {
    const [, ...columns] = parquetMetadata(file).schema;
    expect(columns.map(({ name }) => name)).toEqual(valuesColumns(handMadeResults().factors).map(({ name }) => name));
    expect(columns.map(({ type, converted_type }) => converted_type ?? type)).toEqual([
      "UTF8",
      "UTF8",
      "INT32",
      "UTF8",
      "UTF8",
      "DOUBLE",
      "UTF8",
      "TIMESTAMP_MILLIS",
    ]);
  });

  it("writes names as they are: the apostrophe against formulas is for spreadsheets only", async () => {
    const rows = await parquetReadObjects({ file });
    expect(rows.at(-1)!.variant).toBe("+1 person, skinning");
  });

  it("is the same bytes for the same results, and says how they were made", () => {
    expect(valuesParquet(handMadeResults())).toEqual(bytes);
    expect(parquetMetadata(file).key_value_metadata).toEqual([
      { key: "study", value: "Hand-made study" },
      { key: "command", value: "gambrel study hand-made.json" },
    ]);
  });

  it("brings back the doubles that are hard to write", async () => {
    const results = handMadeResults();
    const hard = [0.1 + 0.2, 5e-324, -0];
    const [base, ...others] = results.variants;
    const variants = [{ ...base!, values: { ...base!.values, headsPerHour: hard } }, ...others];
    const rows = await parquetReadObjects({ file: valuesParquet({ ...results, variants }).buffer as ArrayBuffer });
    expect(rows.slice(0, 3).map(({ value }) => value)).toEqual(hard);
  });
});
