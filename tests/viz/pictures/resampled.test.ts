import { expect, test } from "vitest";
import { resampled } from "../../../viz/pictures/index.ts";

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
