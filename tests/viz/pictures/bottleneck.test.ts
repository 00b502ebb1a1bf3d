import { beforeAll, expect, test } from "vitest";
import type { StudyResults } from "../../../viz/contract.ts";
import { type BottleneckColumns, bottleneckChart } from "../../../viz/index.ts";
import { bottleneckTable, bottleneckView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { whyDay, whyStudy } from "../../support/whyStudy.ts";

const COLUMNS: BottleneckColumns = {
  title: "Where the bottleneck was",
  caption: "Solid: one stage held the line back",
  subtitle: "Longest active period",
  description: "Evisceration most of the day.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
  stages: [
    { name: "skinning", note: "20 % alone\n5 % moving" },
    { name: "evisceration", note: "55 % alone\n10 % moving" },
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
  expect(textsOf(svg)).toContain("the bottleneck, moving to or from another stage (shifting)");
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

let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
});

test("the drawn spans cover what the day's shares say", () => {
  const variant = results.variants[1]!;
  const view = bottleneckView(results, variant)!;
  for (const { stage, sole, shifting } of variant.day.binding!.bottleneck.shares) {
    if (sole + shifting < 0.005) continue;
    const covered = (kind: string) =>
      view.spans
        .filter((span) => span.stage === stage && span.kind === kind)
        .reduce((sum, { from, to }) => sum + to - from, 0);
    expect(covered("sole") / variant.day.workFinishSeconds).toBeCloseTo(sole, 9);
    expect(covered("shifting") / variant.day.workFinishSeconds).toBeCloseTo(shifting, 9);
  }
});

test("the words say how it is on this day and over all days", () => {
  expect(bottleneckView(results, results.variants[1]!)!.description).toMatch(
    /^On this day skinning was the bottleneck longest\. .* Over all 4 simulated days skinning comes first: alone [\d.]+ % \(/,
  );
  const day = whyDay();
  expect(bottleneckView(day, day.variants[0]!)!.description).not.toContain("Over all");
});

test("stages that were it for an instant are named, not drawn", () => {
  const variant = results.variants[1]!;
  const { day } = variant;
  const shares = day.binding!.bottleneck.shares.map((share) =>
    share.stage === "stunning" ? { ...share, sole: 0.001, shifting: 0 } : share,
  );
  const binding = { ...day.binding!, bottleneck: { ...day.binding!.bottleneck, shares } };
  const view = bottleneckView(results, { ...variant, day: { ...day, binding } })!;
  expect(view.stages.map(({ name }) => name)).not.toContain("stunning");
  expect(view.footnote).toContain("stunning");
});

test("a day whose course was not recorded has no strip", () => {
  const variant = results.variants[0]!;
  const without = (binding: typeof variant.day.binding) =>
    bottleneckView(results, { ...variant, day: { ...variant.day, binding } });
  expect(without(null)).toBeNull();
  const { binding } = variant.day;
  expect(without({ ...binding!, bottleneck: { ...binding!.bottleneck, spans: null } })).toBeNull();
});

test("the table adds up the spans of each stage, and a stage without spans has none", () => {
  const spans = [
    { stage: "a", from: 0, to: 4, kind: "sole" },
    { stage: "b", from: 0, to: 3, kind: "shifting" },
    { stage: "a", from: 5, to: 6, kind: "sole" },
    { stage: "a", from: 4, to: 5, kind: "shifting" },
  ] as const;
  const stages = ["a", "b", "__proto__"].map((name) => ({ name, note: "" }));
  expect(bottleneckTable({ ...COLUMNS, stages, spans }).rows).toEqual([
    ["a", 5, 1],
    ["b", 0, 3],
    ["__proto__", 0, 0],
  ]);
});
