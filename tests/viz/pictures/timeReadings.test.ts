import { expect, test } from "vitest";
import {
  bottleneckReadings,
  chillerReadings,
  chillersOf,
  chillerView,
  crewReadings,
  crewView,
  headsOutReadings,
  headsOutView,
  loadReadings,
  loadView,
  queueReadings,
  queueView,
  resampled,
  stateReadings,
  stateView,
  timeTable,
  wipReadings,
  wipView,
} from "../../../viz/pictures/index.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const results = exampleDay("ferncote");
const base = results.variants[0]!;

test("every drawn trace can be read off, with its unit", () => {
  const queues = queueView(results, base);
  const { series, startClockSeconds } = queueReadings(queues);
  expect(startClockSeconds).toBe(base.day.startClockSeconds);
  expect(series.map(({ name, unit, trace }) => [name, unit, trace])).toEqual(
    queues.panels.map(({ name, trace }) => [name, "heads", trace]),
  );
  const [stage] = chillersOf(base);
  expect(chillerReadings(chillerView(results, base, stage!)).series.map(({ unit }) => unit)).toEqual(["heads", "kW"]);
  expect(
    wipReadings(wipView(results, base))
      .series.map(({ name }) => name)
      .sort(),
  ).toEqual(base.day.sections.map(({ name }) => name).sort());
});

test("the states of a station are one group in per cent that add up to 100 where it was watched", () => {
  const { series } = stateReadings(stateView(results, base));
  const skinning = series.filter(({ group }) => group === "skinning");
  expect(skinning.map(({ name }) => name)).toEqual(stateView(results, base).states);
  const at = (bin: number) =>
    skinning.reduce((sum, { trace }) => sum + (trace.kind === "binned" ? trace.mean[bin]! : 0), 0);
  expect(at(20)).toBeCloseTo(100, 9);
});

test("a crew's people at work and on duty are one group", () => {
  const { series } = crewReadings(crewView(results, base)!);
  expect(series).toHaveLength(2 * base.day.crews.length);
  expect(series.slice(0, 2).map(({ group, name }) => [group, name])).toEqual([
    [base.day.crews[0]!.name, "with work in hand"],
    [base.day.crews[0]!.name, "on duty"],
  ]);
});

test("a straight target is read between its points", () => {
  const { series } = headsOutReadings(headsOutView(results, base));
  const target = series.find(({ name }) => name === "target")!;
  // 600 heads/h from 06:00 on: half an hour after it 300 heads, to the half minute that a minute's mean is off.
  if (target.trace.kind !== "binned") throw new Error("a target is read by the minute");
  const minute = (6.5 * 3600 - base.day.startClockSeconds) / 60;
  expect(Math.abs(target.trace.mean[minute]! - 305)).toBeLessThan(1e-6);
});

test("a lorry is in one phase at a time, each from the end of the one before", () => {
  const { spans, series } = loadReadings(loadView(results, base)!);
  expect(spans.map(({ name }) => name)).toEqual(base.day.loads.map(({ name }) => name));
  for (const { spans: phases } of spans) {
    phases.slice(1).forEach((phase, index) => {
      expect(phase.from).toBe(phases[index]!.to);
    });
    expect(phases[0]!.text).toBe("crates on the lorry");
  }
  expect(new Set(series.map(({ unit }) => unit))).toEqual(new Set(["crates"]));
});

test("a bottleneck is told by stage and kind", () => {
  const words = { title: "", caption: "", subtitle: "", description: "", footnote: "" };
  const columns = {
    ...{ ...words, startClockSeconds: 0, endSeconds: 9, pauses: [] },
    stages: [{ name: "a", note: "" }],
    spans: [
      { stage: "a", from: 0, to: 4, kind: "sole" as const },
      { stage: "a", from: 4, to: 6, kind: "shifting" as const },
    ],
  };
  expect(bottleneckReadings(columns).spans).toEqual([
    {
      name: "a",
      spans: [
        { from: 0, to: 4, text: "the bottleneck alone" },
        { from: 4, to: 6, text: "moving to or from another stage" },
      ],
    },
  ]);
});

const DAY = { startClockSeconds: 6 * 3600, spans: [] };
const steps = { kind: "exact", times: [0, 450], values: [0, 8] } as const;

test("a row a round step of time, mean and most of each trace with its unit", () => {
  const series = [{ group: "", name: "skinning", unit: "heads", trace: steps }];
  const { columns, rows } = timeTable({ ...DAY, endSeconds: 900, series });
  expect(columns.map(({ name, unit }) => `${name} (${unit})`)).toEqual([
    "from (clock time, steps of 5 min)",
    "skinning: mean (heads)",
    "skinning: most (heads)",
  ]);
  expect(rows).toEqual([
    ["06:00", 0, 0],
    ["06:05", 4, 8],
    ["06:10", 8, 8],
  ]);
});

test("where only means are known there is no column of the most", () => {
  const values = [1, 2];
  const trace = { kind: "binned", binSeconds: 300, low: values, high: values, mean: values } as const;
  const { columns } = timeTable({
    ...DAY,
    endSeconds: 600,
    series: [{ group: "crew", name: "on duty", unit: "people", trace }],
  });
  expect(columns.map(({ name }) => name)).toEqual(["from", "crew, on duty: mean"]);
});

test.each([900, 9 * 3600, 30 * 3600, 1000 * 3600])("a run of %i s takes at most some 48 rows", (endSeconds) => {
  const { rows } = timeTable({ ...DAY, endSeconds, series: [] });
  expect(rows.length).toBeLessThanOrEqual(49);
});

test("steps of an exact trace keep its peaks and weigh its mean by time", () => {
  const trace = { kind: "exact", times: [0, 4, 6, 10], values: [0, 5, 2, 1] } as const;
  const { low, high, mean } = resampled(trace, 25, 10);
  expect(low).toEqual([0, 1, 1]);
  expect(high).toEqual([5, 1, 1]);
  expect(mean[0]).toBeCloseTo((0 * 4 + 5 * 2 + 2 * 4) / 10, 12);
});

test("a bin over the edge of two steps counts in both by the time it shares with each", () => {
  const trace = { kind: "binned", binSeconds: 8, low: [0, 3], high: [4, 9], mean: [2, 6] } as const;
  expect(resampled(trace, 16, 10)).toEqual({ low: [0, 3], high: [9, 9], mean: [(2 * 8 + 6 * 2) / 10, 6] });
});

test("no peak is lost, whatever the steps", () => {
  const high = Array.from({ length: 100 }, (_, bin) => (bin * 37) % 101);
  const trace = { kind: "binned", binSeconds: 60, low: high, high, mean: high } as const;
  for (const step of [300, 700, 3600]) expect(Math.max(...resampled(trace, 6000, step).high)).toBe(Math.max(...high));
});
