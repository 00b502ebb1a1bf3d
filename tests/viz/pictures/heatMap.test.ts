import { expect, test } from "vitest";
import { type HeatMapColumns, heatMapChart } from "../../../viz/index.ts";
import { heatMapTable, heatMapView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { syntheticCurve, syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

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
    cell(1, 0, 529, "today"),
    cell(0, 1, 527),
    cell(1, 1, 538, "may be as good"),
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
  for (const mark of ["today", "best", "may be as good"]) expect(texts).toContain(mark);
});

test("cells of one value share one shade; without a cell it says so", () => {
  const same = { ...COLUMNS, cells: [cell(0, 0, 5), cell(1, 1, 5)] };
  const svg = heatMapChart(same, testContext());
  const shades = [...svg.querySelectorAll("[data-value] rect")].map((rect) => rect.getAttribute("fill-opacity"));
  expect(new Set(shades).size).toBe(1);
  expect(textsOf(heatMapChart({ ...COLUMNS, cells: [] }, testContext()))[1]).toMatch(/^No pair/);
});

const study = syntheticFactorial();
const info = study.responses[0]!;

test("a study of two factors has a cell for every variant that lies on their levels", () => {
  const view = heatMapView(study, info)!;
  const on = study.variants.filter(({ levels }) => levels.every((level) => level >= 0));
  expect(view.cells).toHaveLength(on.length);
  expect(view.cells.map(({ column, row }) => [column, row])).toEqual(on.map(({ levels }) => levels));
  expect(view.cells[0]!.words).toMatch(/ at 95 %, \d+ simulated days\)$/);
  expect(view.cells[0]!.detail).toMatch(/^± /);
});

test("base, best and what cannot be told from the best are marked", () => {
  const copy = structuredClone(study);
  copy.variants.forEach((variant, index) => {
    variant.againstBest = { [info.key]: { gap: index - 2, low: -9, high: 9, mayBeBest: index > 0 } };
  });
  const marks = heatMapView(copy, info)!.cells.map(({ mark }) => mark);
  expect(marks[0]).toBe("today");
  expect(marks.filter((mark) => mark === "best")).toHaveLength(1);
  expect(marks.filter((mark) => mark === "may be as good")).toHaveLength(marks.length - 2);
  const less = heatMapView(copy, { ...info, better: "less" })!.cells.map(({ mark }) => mark);
  expect(less[0]).toBe("today and best");
});

test("the two ends of the shading are written so that they differ", () => {
  const copy = structuredClone(study);
  copy.variants.forEach((variant, index) => {
    variant.estimates[info.key]!.mean = index === 0 ? 596.83 : 596.96;
  });
  expect(heatMapView(copy, info)!.ends).toEqual(["596.83 heads/h", "596.96 heads/h"]);
});

test("the title has the unit of figures that stand bare in the cells, and none where every cell has its own", () => {
  expect(heatMapView(study, info)!.title).toContain(", heads/h, by ");
  const clock = { ...info, label: "End of work", unit: "s after day start", format: "clock" } as const;
  expect(heatMapView(study, clock)!.title).toMatch(/^End of work by /);
});

test("one factor, or none, makes no map", () => {
  const curve = syntheticCurve();
  expect(heatMapView(curve, curve.responses[0]!)).toBeNull();
});

test("a heat map has a row a cell, figures as numbers with their unit, clock times as text with a span about them", () => {
  const both = syntheticFactorial();
  const { columns, rows } = heatMapTable(heatMapView(both, syntheticStudy().responses[0]!)!);
  expect(rows).toHaveLength(12);
  expect(columns.slice(2, 4).map(({ unit }) => unit)).toEqual(["heads/h", "heads/h"]);
  const { mean, halfWidth } = both.variants[0]!.estimates.throughput!;
  expect(rows[0]!.slice(2, 4)).toEqual([mean, halfWidth]);
  const clock = heatMapTable(heatMapView(both, { ...syntheticStudy().responses[0]!, format: "clock" })!);
  expect(clock.columns.slice(2, 4).map(({ unit }) => unit)).toEqual(["clock time", "s"]);
  expect(clock.rows[0]![2]).toMatch(/^\d\d:\d\d:\d\d$/);
});
