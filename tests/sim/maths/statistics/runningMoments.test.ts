import { describe, expect, it } from "vitest";
import { RunningMoments } from "../../../../sim/maths/statistics/index.ts";

function momentsOf(values: readonly number[]): RunningMoments {
  const moments = new RunningMoments();
  for (const value of values) moments.add(value);
  return moments;
}

describe("RunningMoments", () => {
  it("has no mean before the first value and no spread before the second", () => {
    expect(momentsOf([])).toMatchObject({ n: 0, mean: null, sd: null });
    expect(momentsOf([0])).toMatchObject({ n: 1, mean: 0, sd: null });
  });

  it("gives the textbook sample standard deviation with divisor n - 1", () => {
    // Worked by hand: squares of deviations from 5 add up to 32; 32 / 7.
    const moments = momentsOf([2, 4, 4, 4, 5, 5, 7, 9]);
    expect(moments.mean).toBe(5);
    expect(moments.sd).toBeCloseTo(Math.sqrt(32 / 7), 14);
    expect([moments.min, moments.max]).toEqual([2, 9]);
  });

  it("keeps the digits of a small spread around a large mean (exact value in closed form)", () => {
    // 1e8 + 0, 1, 2 repeating, 9999 values: variance 2/3 x n / (n - 1).
    const n = 9999;
    const moments = momentsOf(Array.from({ length: n }, (_, index) => 1e8 + (index % 3)));
    const exact = Math.sqrt(((2 / 3) * n) / (n - 1));
    expect(Math.abs(moments.sd! / exact - 1)).toBeLessThan(1e-10);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %s", (value) => {
    expect(() => momentsOf([1, value])).toThrow(RangeError);
  });
});
