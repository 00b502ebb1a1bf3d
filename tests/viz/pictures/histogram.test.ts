import { expect, test } from "vitest";
import { type HistogramColumns, histogramChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const curve = (at: number) =>
  Array.from({ length: 31 }, (_, i) => ({ x: 4 + i / 5, share: 0.3 * Math.exp(-((4 + i / 5 - at) ** 2)) }));

const COLUMNS: HistogramColumns = {
  title: "skinning: times and fits",
  caption: "What to look for",
  subtitle: "60 times. Curves: lowest AIC first",
  description: "lognormal, with the lowest AIC.",
  quantity: { kind: "number", label: "skinning", unit: "s" },
  bins: [
    { from: 4, to: 5, share: 0.2 },
    { from: 5, to: 6, share: 0.5 },
    { from: 6, to: 7, share: 0 },
    { from: 7, to: 8, share: 0.3 },
  ],
  curves: [
    { text: ["lognormal", "lowest AIC", "D 0.115, p 0.70"], points: curve(5.5) },
    { text: ["gamma", "AIC 1.0 above"], points: curve(6) },
  ],
};

test("bars of shares with curves, each named beside a piece of its line", async () => {
  await expect(picture(histogramChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/histogram.svg");
  expect(textsOf(histogramChart(COLUMNS, testContext()))).toEqual(
    expect.arrayContaining(["lognormal", "gamma", "skinning, s"]),
  );
});

test("an empty bar is not drawn, and a curve without end does not make the bars flat", () => {
  const endless = {
    text: ["gamma"],
    points: [
      { x: 4, share: 1000 },
      { x: 5, share: 0.1 },
    ],
  };
  const svg = histogramChart({ ...COLUMNS, curves: [endless] }, testContext());
  const bars = [...svg.querySelectorAll("rect")].slice(1).map((bar) => Number(bar.getAttribute("height")));
  expect(bars).toHaveLength(3);
  expect(Math.max(...bars)).toBeGreaterThan(100);
});

test("no values are said in words", () => {
  expect(textsOf(histogramChart({ ...COLUMNS, bins: [] }, testContext()))[1]).toMatch(/^There are no values/);
});
