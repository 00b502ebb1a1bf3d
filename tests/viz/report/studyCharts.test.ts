import { expect, test } from "vitest";
import { dayCharts, drawnVariants, limitCharts, responseCharts } from "../../../viz/report/studyCharts.ts";
import { syntheticCurve, syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

test("days are drawn for the base case and for the variant furthest from it, and for nothing else", () => {
  expect(drawnVariants(syntheticStudy()).map((variant) => variant.name)).toEqual([
    "As it is",
    "One more at evisceration",
  ]);
  expect(drawnVariants(syntheticSingleDay())).toHaveLength(1);
});

test("the first three responses are drawn, each with its differences", () => {
  expect(responseCharts(syntheticStudy()).map((chart) => chart.name)).toEqual([
    "response-1-throughput",
    "difference-1-throughput",
    "response-2-finish",
    "difference-2-finish",
    "response-3-stun-to-stick-beyond",
    "difference-3-stun-to-stick-beyond",
  ]);
});

test("every planned picture tells its finding in words before it is drawn", () => {
  const study = syntheticCurve();
  const base = study.variants[0]!;
  for (const chart of [...responseCharts(study), ...dayCharts(study, base, "d"), ...limitCharts(study, base, "d")]) {
    expect(chart.description.length, chart.name).toBeGreaterThan(20);
  }
});
