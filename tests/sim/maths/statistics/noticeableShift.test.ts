import { describe, expect, it } from "vitest";
import { noticeableShift } from "../../../../sim/maths/statistics/index.ts";

describe("noticeableShift", () => {
  it.each([
    [1, 0.95, 16.334009],
    [4, 0.95, 3.76106],
    [24, 1 - 0.05 / 9, 3.933013],
    [126, 0.95, 2.823165],
    [10, 0.99, 4.115643],
  ])("agrees with SciPy's noncentral t for %i degrees of freedom at %d", (df, confidence, expected) => {
    expect(Math.abs(noticeableShift(df, confidence, 0.8) / expected - 1)).toBeLessThan(1e-4);
  });

  it.each([
    [0.5, 64],
    [0.8, 26],
    [1, 17],
    [1.2, 12],
  ])("gives Cohen's sizes of two samples: a difference of %d sd takes %i of each (1988, table 2.4.1)", (d, size) => {
    const found = (n: number) => noticeableShift(2 * n - 2, 0.95, 0.8) <= d * Math.sqrt(n / 2);
    expect([found(size - 1), found(size)]).toEqual([false, true]);
  });

  it("nears the sum of two normal quantiles as the spread becomes known", () => {
    expect(noticeableShift(1e5, 0.95, 0.8)).toBeCloseTo(1.959964 + 0.841621, 3);
  });

  it("refuses what has no answer", () => {
    expect(() => noticeableShift(0, 0.95, 0.8)).toThrow(/df is 0/);
    expect(() => noticeableShift(5, 0.95, 0.05)).toThrow(/power is 0\.05/);
  });
});
