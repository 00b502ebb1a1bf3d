import { expect, test } from "vitest";
import { type BottleneckColumns, bottleneckChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: BottleneckColumns = {
  title: "Where the bottleneck was",
  caption: "Solid: one stage held the line back",
  subtitle: "Longest active period",
  description: "Evisceration most of the day.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
  stages: [
    { name: "skinning", note: "20 % alone\n5 % shifting" },
    { name: "evisceration", note: "55 % alone\n10 % shifting" },
  ],
  spans: [
    { stage: "skinning", from: 0, to: 1400, kind: "sole" },
    { stage: "skinning", from: 1400, to: 1800, kind: "shifting" },
    { stage: "evisceration", from: 1400, to: 1800, kind: "shifting" },
    { stage: "evisceration", from: 1800, to: 7000, kind: "sole" },
  ],
  footnote: "",
};

test("spans alone are solid, spans in which it shifts are hatched, and the key says so", async () => {
  const svg = bottleneckChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/bottleneck.svg");
  expect(textsOf(svg)).toContain("the bottleneck by itself");
});

test("ten thousand spans stay under 300 kB", () => {
  const spans = Array.from({ length: 10_000 }, (_, i) => {
    return { stage: "skinning", from: i * 0.7, to: i * 0.7 + 0.3, kind: i % 2 ? "sole" : "shifting" } as const;
  });
  expect(picture(bottleneckChart({ ...COLUMNS, spans }, testContext())).length).toBeLessThan(300_000);
});

test("without spans it says why", () => {
  expect(textsOf(bottleneckChart({ ...COLUMNS, spans: [] }, testContext()))[1]).toMatch(/^No stage/);
});
