import { expect, test } from "vitest";
import { dayCharts, drawnVariants, limitCharts, responseCharts } from "../../../viz/report/studyCharts.ts";
import { testContext } from "../../support/drawing.ts";
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

test("a long line is drawn on several pictures, none too tall for a sheet of A4 at full size", () => {
  const study = syntheticSingleDay();
  const { day } = study.variants[0]!;
  const many = <T extends { name: string }>(list: readonly T[]): T[] =>
    [0, 1, 2].flatMap((turn) => list.map((each) => ({ ...each, name: `${each.name} ${turn}` })));
  day.stages = many(day.stages);
  day.traces = { ...day.traces!, queues: many(day.traces!.queues), states: many(day.traces!.states) };
  const charts = dayCharts(study, study.variants[0]!, "d").filter(({ name }) => /states|queues/.test(name));
  const names = ["d-states", "d-states-2", "d-states-3", "d-queues", "d-queues-2", "d-queues-3"];
  expect(charts.map(({ name }) => name)).toEqual(names);
  for (const { name, draw } of charts)
    expect(Number(draw(testContext({ width: 700 })).getAttribute("height")), name).toBeLessThanOrEqual(940);
  expect(new Set(charts.map(({ title }) => title)).size).toBe(charts.length);
});

test("every planned picture tells its finding in words before it is drawn", () => {
  const study = syntheticCurve();
  const base = study.variants[0]!;
  for (const chart of [...responseCharts(study), ...dayCharts(study, base, "d"), ...limitCharts(study, base, "d")]) {
    expect(chart.description.length, chart.name).toBeGreaterThan(20);
  }
});
