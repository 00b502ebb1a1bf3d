import { expect, it } from "vitest";
import { resultsTable } from "../../../../sim/days/results/index.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

it("has a row for every variant and result, each figure of its kind", () => {
  const results = handMadeResults();
  const { columns, rows } = resultsTable(results);
  expect(rows).toHaveLength(2 * 3);
  const cell = (row: number, name: string) => rows[row]![columns.findIndex((column) => column.name === name)];
  expect(cell(0, "Mean")).toBe(480);
  expect(cell(0, "Difference")).toBeNull();
  expect([cell(3, "factor: people"), cell(3, "Difference"), cell(3, "Difference shown")]).toEqual(["5", 30, "yes"]);
  const { day, estimates } = results.variants[0]!;
  expect(cell(1, "Mean")).toEqual({ value: day.startClockSeconds + estimates.finish!.mean, as: "clock" });
  expect([cell(1, "Unit"), cell(4, "Unit of difference")]).toEqual(["time of day", "s"]);
  expect(cell(2, "Mean")).toBeNull();
});
