import { expect, test } from "vitest";
import { type ProbabilityColumns, probabilityChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: ProbabilityColumns = {
  title: "skinning: observed against fitted, lognormal",
  caption: "What to look for",
  subtitle: "On the line when the fit is right",
  description: "D 0.115, p 0.70",
  fitted: { kind: "number", label: "fitted (lognormal)", unit: "s" },
  observed: { kind: "number", label: "observed", unit: "s" },
  points: [4, 5, 5.5, 6, 7.4].map((x) => ({
    fitted: x,
    observed: x + 0.2 * Math.sin(7 * x),
    low: x - 0.4,
    high: x + 0.5,
  })),
};

test("dots about the line of equal values, with a band", async () => {
  await expect(picture(probabilityChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/probability.svg");
  expect(probabilityChart(COLUMNS, testContext()).querySelectorAll("circle")).toHaveLength(5);
});

test("without a band only dots and the line", () => {
  const points = COLUMNS.points.map((point) => ({ ...point, low: null, high: null }));
  const svg = probabilityChart({ ...COLUMNS, points }, testContext());
  expect([...svg.querySelectorAll("path")].filter((path) => path.getAttribute("d")!.endsWith("Z"))).toHaveLength(0);
});

test("no points are said in words", () => {
  expect(textsOf(probabilityChart({ ...COLUMNS, points: [] }, testContext()))[1]).toMatch(/^Nothing was fitted/);
});
