import { expect, test } from "vitest";
import { type ScreeningColumns, screeningChart, screeningView } from "../../../viz/index.ts";
import { screeningTable } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { screeningResults } from "../../support/screeningResults.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const COLUMNS: ScreeningColumns = {
  title: "Throughput: which factors matter",
  caption: "What to look for",
  subtitle: "Further right: matters more",
  description: "Time per head matters most.",
  quantity: { kind: "number", label: "difference to today's plan", unit: "heads/h" },
  points: [
    { name: "time per head", muStar: 46, sigma: 34, halfWidth: 28 },
    { name: "places", muStar: 6, sigma: 11, halfWidth: 9 },
    { name: "walking", muStar: 5, sigma: 11, halfWidth: null },
  ],
};

test("every factor is a dot at size and spread of its effect, named beside the plot", async () => {
  const svg = screeningChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/screening.svg");
  expect(svg.querySelectorAll("circle")).toHaveLength(3);
  const texts = textsOf(svg);
  for (const text of ["time per head", "places", "walking", "mean size of the effect (μ*), heads/h"])
    expect(texts).toContain(text);
});

test("names of factors with the same spread stand apart", () => {
  const labels = [...screeningChart(COLUMNS, testContext()).querySelectorAll("text")];
  const at = (name: string) => Number(labels.find(({ textContent }) => textContent === name)!.getAttribute("y"));
  expect(Math.abs(at("places") - at("walking"))).toBeGreaterThanOrEqual(16);
});

test("no factor with an effect is said in words", () => {
  expect(textsOf(screeningChart({ ...COLUMNS, points: [] }, testContext()))[1]).toMatch(/^No factor has an effect/);
});

test("a screening is drawn factor by factor, in the unit of the response's differences", () => {
  const results = screeningResults();
  const view = screeningView(results, results.responses[0]!)!;
  expect(view.points[0]).toEqual({ name: "time per head", muStar: 46, sigma: 34, halfWidth: 2 });
  expect(view.points).toHaveLength(3);
  expect(view.description).toContain("matters most");
  expect(screeningView(syntheticStudy(), results.responses[0]!)).toBeNull();
});

test("a screening has a row a factor, in the unit of the differences", () => {
  const screening = screeningResults();
  const { columns, rows } = screeningTable(screeningView(screening, syntheticStudy().responses[0]!)!);
  expect(columns[1]).toEqual({ name: "mean size", unit: "heads/h" });
  expect(rows[0]).toEqual(["time per head", 46, 2, 34]);
});
