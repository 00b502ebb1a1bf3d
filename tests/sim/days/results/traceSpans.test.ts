import { expect, it } from "vitest";
import { stateSpans, stepSpans } from "../../../../sim/days/results/traceSpans.ts";

function binned(low: number[], high: number[], mean: number[], endSeconds = low.length * 10) {
  return { kind: "binned" as const, name: "skinning", endSeconds, binSeconds: 10, low, high, mean };
}

it("joins neighbours that hold one value throughout, and no others", () => {
  expect(stepSpans(binned([2, 2, 0, 5, 5, 4], [2, 2, 3, 5, 5, 4], [2, 2, 1.5, 5, 5, 4]))).toEqual([
    { from: 0, seconds: 20, low: 2, high: 2, mean: 2 },
    { from: 20, seconds: 10, low: 0, high: 3, mean: 1.5 },
    { from: 30, seconds: 20, low: 5, high: 5, mean: 5 },
    { from: 50, seconds: 10, low: 4, high: 4, mean: 4 },
  ]);
});

it("makes at most 256 bins of a day and keeps every peak, every trough and the mean", () => {
  const high = Array.from({ length: 770 }, (_, bin) => (bin === 401 ? 99 : 5 + (bin % 7)));
  const low = high.map((value, bin) => (bin === 613 ? 0 : value - 4));
  const mean = high.map((value) => value - 2);
  const trace = binned(low, high, mean, 7696);
  const spans = stepSpans(trace);
  expect(spans).toHaveLength(Math.ceil(770 / 4));
  expect(Math.max(...spans.map((span) => span.high))).toBe(99);
  expect(spans[100]!.high).toBe(99);
  expect(Math.min(...spans.map((span) => span.low))).toBe(0);
  const covered = ({ from, seconds }: { from: number; seconds: number }) => Math.min(7696, from + seconds) - from;
  const area = spans.reduce((sum, span) => sum + span.mean * covered(span), 0);
  const whole = mean.reduce((sum, value, bin) => sum + value * covered({ from: bin * 10, seconds: 10 }), 0);
  expect(area).toBeCloseTo(whole, 6);
});

it("adds position-seconds up, leaves bins without any out, and does not bridge them", () => {
  const seconds = [10, 0, 10, 0, 0, 10, 10, 0, 7, 3];
  expect(stateSpans({ name: "skinning", endSeconds: 50, binSeconds: 10, seconds }, 0, 2)).toEqual([
    { from: 0, seconds: 20, value: 20 },
    { from: 30, seconds: 10, value: 10 },
    { from: 40, seconds: 10, value: 7 },
  ]);
});

it("makes nothing of a trace without bins", () => {
  expect(stepSpans(binned([], [], []))).toEqual([]);
});
