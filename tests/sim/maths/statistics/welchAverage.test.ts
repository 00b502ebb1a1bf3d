import { describe, expect, it } from "vitest";
import { welchAverage } from "../../../../sim/maths/statistics/index.ts";

const RUNS = [
  [2, 4, 5, 6, 6, 7, 7, 7, 8, 7],
  [1, 3, 5, 5, 7, 6, 8, 7, 7, 8],
  [0, 3, 4, 6, 6, 7, 7, 8, 7, 7],
];

describe("welchAverage (Welch 1983)", () => {
  it("averages and smooths three runs of ten with two neighbours on either side (by hand)", () => {
    const { averages, smoothed } = welchAverage(RUNS, 2);
    const sums = [3, 10, 14, 17, 19, 20, 22, 22, 22, 22];
    expect(averages).toEqual(sums.map((sum) => expect.closeTo(sum / 3, 12)));
    const expected = [1, 3, 4.2, 16 / 3, 92 / 15, 20 / 3, 7, 7.2];
    expect(smoothed).toEqual(expected.map((value) => expect.closeTo(value, 12)));
  });

  it("leaves the averages as they are without neighbours, and a straight line straight with any", () => {
    expect(welchAverage(RUNS, 0).smoothed).toEqual(welchAverage(RUNS, 0).averages);
    const line = Array.from({ length: 30 }, (_, time) => 3 + 2 * time);
    welchAverage([line], 7).smoothed.forEach((value, time) => {
      expect(value).toBeCloseTo(line[time]!, 10);
    });
  });

  it("is empty without runs, and refuses uneven runs and impossible windows", () => {
    expect(welchAverage([], 3)).toEqual({ averages: [], smoothed: [] });
    expect(() => welchAverage([[1, 2], [1]], 0)).toThrow(/different lengths/);
    for (const window of [-1, 10, 0.5]) expect(() => welchAverage(RUNS, window)).toThrow(RangeError);
  });
});
