import { describe, expect, it } from "vitest";
import { quantile } from "../../../../sim/maths/statistics/index.ts";

/** Twenty cycle times in seconds, invented. */
const SORTED = Object.freeze(
  [6.2, 7.9, 5.1, 8.8, 6.7, 5.9, 10.4, 7.1, 6.0, 4.6, 9.3, 6.5, 7.4, 5.5, 12.1, 6.9, 5.3, 8.1, 7.0, 6.4].sort(
    (a, b) => a - b,
  ),
);

describe("quantile (type 7 of Hyndman and Fan 1996)", () => {
  it.each([
    [0, 4.6],
    [0.05, 5.075],
    [0.25, 5.975],
    [0.5, 6.8],
    [0.9, 9.41],
    [0.95, 10.485],
    [1, 12.1],
  ])("agrees with NumPy's default at p = %s", (p, expected) => {
    expect(quantile(SORTED, p)).toBeCloseTo(expected, 12);
  });

  it("is the value itself for one value and null for none", () => {
    expect(quantile([3], 0.9)).toBe(3);
    expect(quantile([], 0.5)).toBeNull();
  });

  it.each([-0.1, 1.1, Number.NaN])("refuses p = %s", (p) => {
    expect(() => quantile([1, 2], p)).toThrow(RangeError);
  });
});
