import { describe, expect, it } from "vitest";
import { pairedDifference } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

describe("pairedDifference", () => {
  it("gives the paired interval of the worked sample (recomputed with SciPy)", () => {
    const found = pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    expect(found.n).toBe(10);
    expect(found.mean).toBeCloseTo(6.8, 12);
    expect(found.sd).toBeCloseTo(2.6583203, 7);
    expect(found.halfWidth).toBeCloseTo(1.9016478, 6);
    expect(found.low).toBeCloseTo(4.898352, 6);
    expect(found.high).toBeCloseTo(8.701648, 6);
    expect(found.relativeLow).toBeCloseTo(4.898352 / 606, 8);
    expect(found.shown).toBe(true);
  });

  it("turns its sign when the two change places", () => {
    const there = pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    const back = pairedDifference(BASE_SAMPLE, VARIANT_SAMPLE, 0.95)!;
    expect(back.low).toBeCloseTo(-there.high!, 12);
  });

  it("calls a difference whose interval holds 0 not distinguishable", () => {
    const found = pairedDifference([3, 1, 2, 2], [2, 2, 3, 1], 0.95)!;
    expect(found.shown).toBe(false);
  });

  it("drops a pair when either side is missing, and n tells", () => {
    const found = pairedDifference([1, null, 3, 9], [0, 1, null, 8], 0.9)!;
    expect(found).toMatchObject({ n: 2, mean: 1 });
  });

  it("says that identical days are the same instead of inventing an interval", () => {
    const found = pairedDifference(BASE_SAMPLE, BASE_SAMPLE, 0.95)!;
    expect(found).toMatchObject({ mean: 0, low: 0, high: 0, shown: false });
  });

  it("has no interval with one pair and no value with none", () => {
    const one = pairedDifference([5], [3], 0.95)!;
    expect(one).toMatchObject({ n: 1, mean: 2, low: null, relativeLow: null, shown: false });
    expect(pairedDifference([null], [3], 0.95)).toBeNull();
  });

  it("gives no relative difference to a base of 0 nor on an interval scale", () => {
    expect(pairedDifference([1, 2], [0, 0], 0.95)).toMatchObject({ relativeLow: null, relativeHigh: null });
    expect(pairedDifference([100, 101], [40, 42], 0.95, "interval")).toMatchObject({ relativeLow: null });
  });

  it("refuses lists that are no pairs", () => {
    expect(() => pairedDifference([1], [1, 2], 0.95)).toThrow(/pairs/);
  });
});

it("takes values that agree to 12 digits as equal: what is left is the rounding of their arithmetic", () => {
  const base = [100, 200, 300];
  const same = base.map((value) => value * (1 + 2e-13));
  expect(pairedDifference(same, base, 0.95)).toMatchObject({ mean: 0, low: 0, high: 0, shown: false });
  const other = base.map((value) => value * (1 + 2e-9));
  expect(pairedDifference(other, base, 0.95)!.mean).toBeGreaterThan(0);
});
