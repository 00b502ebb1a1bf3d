import { expect, test } from "vitest";
import { type ChillerColumns, chillerChart } from "../../../viz/index.ts";
import { chillersOf, chillerView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const COLUMNS: ChillerColumns = {
  title: "What the chiller holds",
  caption: "A fill at the dashed line stops the line",
  subtitle: "One day",
  description: "Never full.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
  panels: [
    {
      label: "carcasses in the chiller",
      unit: "heads",
      largest: 900,
      capacity: 1200,
      capacityText: "1 200 places",
      trace: {
        kind: "binned",
        binSeconds: 1800,
        low: [0, 200, 500, 700],
        high: [200, 500, 700, 900],
        mean: [90, 350, 600, 800],
      },
    },
    {
      label: "heat out of carcasses",
      unit: "kW",
      largest: 42,
      capacity: null,
      capacityText: "most 42 kW",
      trace: { kind: "binned", binSeconds: 1800, low: [0, 9, 23, 32], high: [9, 23, 32, 42], mean: [4, 16, 28, 37] },
    },
  ],
  footnote: "",
};

test("fill with its capacity, heat with its unit", async () => {
  const svg = chillerChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/chiller.svg");
  const texts = textsOf(svg);
  expect(texts).toContain("carcasses in the chiller, heads");
  expect(texts).toContain("heat out of carcasses, kW");
});

test("without traces it says why", () => {
  expect(textsOf(chillerChart({ ...COLUMNS, panels: [], footnote: "No traces." }, testContext()))[1]).toBe(
    "No traces.",
  );
});

const results = exampleDay("parts/chiller");
const base = results.variants[0]!;

test("a dwell stage that takes heat out, or holds heads for half an hour, is a chiller; bleeding is none", () => {
  const ferncote = exampleDay("ferncote").variants[0]!;
  expect(chillersOf(ferncote).map(({ name }) => name)).toEqual(["chilling"]);
  const cold = {
    ...ferncote,
    day: { ...ferncote.day, stages: ferncote.day.stages.map((s) => ({ ...s, heatJoules: 0 })) },
  };
  expect(chillersOf(cold).map(({ name }) => name)).toEqual(["chilling"]);
});

test("the heat drawn is all the heat that came out: its integral over the day is the record's", () => {
  const [stage] = chillersOf(base);
  const [fill, heat] = chillerView(results, base, stage!).panels;
  expect([fill!.unit, heat!.unit]).toEqual(["heads", "kW"]);
  const { trace } = heat!;
  if (trace.kind !== "binned") throw new Error("a binned trace was asked for");
  const kilojoules = trace.mean.reduce((sum, kilowatts, bin) => {
    return sum + kilowatts * Math.min(trace.binSeconds, base.day.finishSeconds - bin * trace.binSeconds);
  }, 0);
  expect((kilojoules * 1000) / stage!.heatJoules).toBeCloseTo(1, 9);
});

test("the most heat is that of the response: the most heads at once times the mean heat per head-second", () => {
  const [stage] = chillersOf(base);
  const peak = base.estimates[`heatLoad.${stage!.name}.peak`];
  const { panels, description } = chillerView(results, base, stage!);
  const watched = base.day.finishSeconds - base.day.watchedFromSeconds;
  const expected = (stage!.heatJoules * stage!.queue.max) / (stage!.queue.mean * watched * 1000);
  expect(panels[1]!.largest).toBeCloseTo(expected, 9);
  if (peak) expect(panels[1]!.largest).toBeCloseTo(peak.mean, 9);
  expect(description).toMatch(
    /held at most .* heads \(.*\), about \d\d:\d\d; heat out of the carcasses at most .* kW\.$/,
  );
});

test("without traces it says so and draws nothing", () => {
  const view = chillerView(results, { ...base, day: { ...base.day, traces: null } }, chillersOf(base)[0]!);
  expect(view.panels).toEqual([]);
  expect(view.footnote).toContain("without traces");
});
