import { expect, test } from "vitest";
import { binnedTrace, drawingBinSeconds } from "../../../viz/pictures/index.ts";

test("an exact trace in bins keeps its peaks and weighs its mean by time", () => {
  const trace = { kind: "exact", name: "q", endSeconds: 25, times: [0, 4, 6, 10], values: [0, 5, 2, 1] } as const;
  const binned = binnedTrace({ ...trace, times: [...trace.times], values: [...trace.values] }, 10);
  expect(binned.low).toEqual([0, 1, 1]);
  expect(binned.high).toEqual([5, 1, 1]);
  expect(binned.mean[0]).toBeCloseTo((0 * 4 + 5 * 2 + 2 * 4) / 10, 12);
});

test("the integral of an exact trace is the sum over its bins", () => {
  const times = [0, 3, 7.5, 11, 19];
  const values = [1, 4, 0, 9, 2];
  const binned = binnedTrace({ kind: "exact", name: "q", endSeconds: 23, times, values }, 5);
  const widths = [5, 5, 5, 5, 3];
  const sum = binned.mean.reduce((total, mean, bin) => total + mean * widths[bin]!, 0);
  expect(sum).toBeCloseTo(1 * 3 + 4 * 4.5 + 0 + 9 * 8 + 2 * 4, 9);
});

test("a binned trace is taken as recorded", () => {
  const trace = {
    kind: "binned",
    name: "q",
    endSeconds: 20,
    binSeconds: 10,
    low: [0, 1],
    high: [2, 3],
    mean: [1, 2],
  } as const;
  expect(binnedTrace({ ...trace, low: [0, 1], high: [2, 3], mean: [1, 2] }, 5).binSeconds).toBe(10);
});

test("recorded bins are joined for drawing without losing a peak, the last by the time it covers", () => {
  const trace = { kind: "binned" as const, name: "q", endSeconds: 45, binSeconds: 10 };
  const bins = { low: [1, 0, 2, 2, 5], high: [3, 9, 4, 4, 8], mean: [2, 4, 3, 3, 6] };
  expect(binnedTrace({ ...trace, ...bins }, 29)).toMatchObject({
    binSeconds: 20,
    low: [0, 2, 5],
    high: [9, 4, 8],
    mean: [3, 3, 6],
  });
  const joined = binnedTrace({ ...trace, ...bins }, 60);
  expect(joined.mean).toEqual([(2 + 4 + 3 + 3 + 6 * 0.5) / 4.5]);
});

test("a day is drawn in some 240 bins of whole half minutes", () => {
  expect([60, 28_800, 43_200].map(drawingBinSeconds)).toEqual([30, 120, 180]);
});
