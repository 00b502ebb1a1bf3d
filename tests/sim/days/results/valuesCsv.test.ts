import { csvParse } from "d3";
import { expect, it } from "vitest";
import { runFiles } from "../../../../sim/days/results/index.ts";
import { summaryColumns } from "../../../../sim/days/results/summaryCsv.ts";
import { hasValuesCsv, valuesColumns, valuesCsv } from "../../../../sim/days/results/valuesCsv.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

it("has one row per variant, response and replication, an empty cell where there is no value", () => {
  const rows = csvParse([...valuesCsv(handMadeResults())].join(""));
  expect(rows).toHaveLength(2 * 3 * 3);
  expect(rows[1]).toMatchObject({
    "factor: people": "4",
    clock: "",
    variant: "base",
    replication: "1",
    response: "headsPerHour",
    value: "480",
  });
  expect(rows.filter((row) => row.response === "beyond.chilling time").map((row) => row.value)).toEqual(
    new Array(6).fill(""),
  );
});

it("names the factors' columns as summary.csv does, with the same levels", () => {
  const { factors } = handMadeResults();
  const named = (columns: { name: string }[]) => columns.map(({ name }) => name).filter((name) => /^factor/.test(name));
  expect(named(valuesColumns(factors))).toEqual(["factor: people"]);
  expect(named(summaryColumns(factors))).toEqual(named(valuesColumns(factors)));
  const rows = csvParse([...valuesCsv(handMadeResults())].join(""));
  expect(new Set(rows.map((row) => `${row.variant} ${row["factor: people"]}`))).toEqual(
    new Set(["base 4", "'+1 person, skinning 5"]),
  );
});

it("writes a time of day as clock time and as a date with time too, beyond midnight as well", () => {
  const results = handMadeResults();
  const [base] = results.variants;
  base!.day.startClockSeconds = 6 * 3600;
  base!.values.finish = [0, 8 * 3600 + 90.4, 18.5 * 3600];
  const rows = csvParse([...valuesCsv(results)].join("")).filter(({ response }) => response === "finish");
  expect(rows.slice(0, 3).map(({ value, clock, date_time }) => [value, clock, date_time])).toEqual([
    ["0", "06:00:00", "2001-01-01T06:00:00"],
    ["28890.4", "14:01:30", "2001-01-01T14:01:30"],
    ["66600", "24:30:00", "2001-01-02T00:30:00"],
  ]);
});

it("is left out of a run with more than 100,000 rows, which has values.parquet", () => {
  const results = handMadeResults();
  const [base, other] = results.variants;
  const withDays = (days: number) => ({ ...results, variants: [base!, { ...other!, days }] });
  // Three responses; three days of today's plan.
  expect(hasValuesCsv(withDays(33_330))).toBe(true);
  expect(hasValuesCsv(withDays(33_331))).toBe(false);
  const filesOf = (days: number) => {
    const parts = { plan: {}, studyText: null, reportHtml: "", charts: [] };
    const files = runFiles({ results: withDays(days), ...parts });
    const dictionary = files.find(({ path }) => path === "data-dictionary.csv")!;
    return { paths: files.map(({ path }) => path), dictionary: "text" in dictionary ? dictionary.text : "" };
  };
  expect(filesOf(33_330).paths).toContain("values.csv");
  const large = filesOf(33_331);
  expect(large.paths).toContain("values.parquet");
  expect(large.paths).not.toContain("values.csv");
  expect(large.dictionary).not.toContain("values.csv");
  expect(large.dictionary).toContain("values.parquet,value,finish");
});
