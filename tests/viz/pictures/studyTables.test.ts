import { expect, test } from "vitest";
import {
  costTable,
  curveTable,
  curveView,
  differenceTable,
  differenceView,
  heatMapTable,
  heatMapView,
  responseTable,
  responseView,
  screeningTable,
  screeningView,
} from "../../../viz/pictures/index.ts";
import { screeningResults } from "../../support/screeningResults.ts";
import { syntheticCurve, syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

const study = syntheticStudy();
const [throughput, finish] = study.responses;

test("responses keep mean and interval as numbers, clock times as text", () => {
  const { columns, rows } = responseTable(responseView(study, throughput!));
  expect(columns.map(({ unit }) => unit)).toEqual(["", "heads/h", "heads/h", "heads/h"]);
  const { mean, low, high } = study.variants[0]!.estimates.throughput!;
  expect(rows[0]).toEqual(["As it is", mean, low, high]);
  expect(responseTable(responseView(study, finish!)).rows[0]![1]).toMatch(/^\d\d:\d\d:\d\d$/);
});

test("differences say whether they are shown", () => {
  const { rows } = differenceTable(differenceView(study, throughput!));
  expect(rows.map((row) => row.at(-1))).toEqual(["yes", "no", "yes"]);
});

test("a curve has a row a level, with a second factor one for each of its levels", () => {
  const curve = syntheticCurve();
  expect(curveTable(curveView(curve, throughput!)!).rows.map(([level]) => level)).toEqual(["2", "4", "8", "16", "32"]);
  const both = syntheticFactorial();
  const table = curveTable(curveView(both, throughput!)!);
  expect(table.rows).toHaveLength(12);
  expect(table.columns[0]!.name).toBe("skinning cycle time");
});

test("a heat map has a row a cell, figures as numbers with their unit, clock times as text with a span about them", () => {
  const both = syntheticFactorial();
  const { columns, rows } = heatMapTable(heatMapView(both, throughput!)!);
  expect(rows).toHaveLength(12);
  expect(columns.slice(2, 4).map(({ unit }) => unit)).toEqual(["heads/h", "heads/h"]);
  const { mean, halfWidth } = both.variants[0]!.estimates.throughput!;
  expect(rows[0]!.slice(2, 4)).toEqual([mean, halfWidth]);
  const clock = heatMapTable(heatMapView(both, { ...throughput!, format: "clock" })!);
  expect(clock.columns.slice(2, 4).map(({ unit }) => unit)).toEqual(["clock time", "s"]);
  expect(clock.rows[0]![2]).toMatch(/^\d\d:\d\d:\d\d$/);
});

test("a screening has a row a factor, in the unit of the differences", () => {
  const screening = screeningResults();
  const { columns, rows } = screeningTable(screeningView(screening, throughput!)!);
  expect(columns[1]).toEqual({ name: "mean size", unit: "heads/h" });
  expect(rows[0]).toEqual(["time per head", 46, 2, 34]);
});

test("cost and gain stand side by side with their units", () => {
  const words = { title: "", caption: "", subtitle: "", description: "" };
  const ends = { mean: 1, low: 0, high: null };
  const { columns, rows } = costTable({
    ...words,
    gain: { kind: "number", label: "throughput", unit: "heads/h" },
    cost: { kind: "number", label: "cost", unit: "EUR/head" },
    points: [{ name: "a", gain: ends, cost: { ...ends, mean: 2 }, undominated: true, base: true, text: "" }],
  });
  expect(columns.map(({ name, unit }) => `${name} ${unit}`)[4]).toBe("cost: mean EUR/head");
  expect(rows).toEqual([["a", 1, 0, null, 2, 0, null, "yes"]]);
});
