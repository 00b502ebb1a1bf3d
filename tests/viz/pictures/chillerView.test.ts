import { expect, test } from "vitest";
import { chillersOf, chillerView } from "../../../viz/pictures/index.ts";
import { exampleDay } from "../../support/exampleDay.ts";

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
