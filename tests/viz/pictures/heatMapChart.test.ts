import { expect, test } from "vitest";
import { type HeatMapColumns, heatMapChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const cell = (column: number, row: number, value: number, mark: HeatMapColumns["cells"][number]["mark"] = "") => ({
  column,
  row,
  value,
  halfWidth: 4,
  text: String(value),
  detail: "\u00B1 4",
  words: `level ${column} and level ${row}: ${value}`,
  mark,
});
const COLUMNS: HeatMapColumns = {
  title: "Throughput by places",
  caption: "Darker is more",
  subtitle: "Mean over 25 replications",
  description: "Most with 10 and 10.",
  columnName: "places before skinning",
  columnLevels: ["1", "4", "10"],
  rowName: "places before evisceration",
  rowLevels: ["2", "10"],
  cells: [
    cell(0, 0, 523),
    cell(1, 0, 529, "base"),
    cell(0, 1, 527),
    cell(1, 1, 538, "not told from the best"),
    cell(2, 1, 540, "best"),
  ],
  quantity: { kind: "number", label: "Throughput", unit: "heads/h" },
  ends: ["523 heads/h", "540 heads/h"],
};

test("every pair of levels has a cell lettered with its value; a pair that was not run stays empty", async () => {
  const svg = heatMapChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/heatMap.svg");
  const texts = textsOf(svg);
  for (const { text } of COLUMNS.cells) expect(texts).toContain(text);
  expect(svg.querySelectorAll("[data-value]")).toHaveLength(5);
});

test("base and best are named in their cells, so that nothing depends on the shade", () => {
  const texts = textsOf(heatMapChart(COLUMNS, testContext()));
  for (const mark of ["base", "best", "not told from the best"]) expect(texts).toContain(mark);
});

test("cells of one value share one shade; without a cell it says so", () => {
  const same = { ...COLUMNS, cells: [cell(0, 0, 5), cell(1, 1, 5)] };
  const svg = heatMapChart(same, testContext());
  const shades = [...svg.querySelectorAll("[data-value] rect")].map((rect) => rect.getAttribute("fill-opacity"));
  expect(new Set(shades).size).toBe(1);
  expect(textsOf(heatMapChart({ ...COLUMNS, cells: [] }, testContext()))[1]).toMatch(/^No pair/);
});
