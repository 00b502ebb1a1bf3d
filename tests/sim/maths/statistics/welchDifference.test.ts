import { describe, expect, it } from "vitest";
import { pairedDifference, welchDifference } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

describe("welchDifference (Welch 1947)", () => {
  it("gives the unpaired interval and test of the worked sample (SciPy)", () => {
    const found = welchDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    expect(found.mean).toBeCloseTo(6.8, 10);
    expect(found.df).toBeCloseTo(17.900885, 6);
    expect(found.t).toBeCloseTo(1.448449, 6);
    expect(found.p).toBeCloseTo(0.164782, 6);
    expect(found.low).toBeCloseTo(-3.067068, 5);
    expect(found.high).toBeCloseTo(16.667068, 5);
  });

  it("is wider than the paired interval of the same values, which is why days share their random numbers", () => {
    const paired = pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    const unpaired = welchDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    expect(unpaired.high - unpaired.low).toBeGreaterThan(5 * (2 * paired.halfWidth!));
  });

  it("turns its sign when the samples change places, and leaves nulls out", () => {
    const there = welchDifference([1, 2, null, 4], [9, 7, 8], 0.9)!;
    const back = welchDifference([9, 7, 8], [1, 2, 4], 0.9)!;
    expect(there.low).toBeCloseTo(-back.high, 12);
    expect(there.p).toBeCloseTo(back.p, 12);
  });

  it("tells not enough data from no spread", () => {
    expect(welchDifference([1, null], [1, 2], 0.95)).toBeNull();
    expect(welchDifference([3, 3], [1, 1, 1], 0.95)).toEqual({
      ...{ mean: 2, low: 2, high: 2, t: Number.POSITIVE_INFINITY, df: 2, p: 0 },
    });
  });
});
