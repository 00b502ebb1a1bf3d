import { describe, expect, it } from "vitest";
import type { ResponseInfo } from "../../../sim/observations/index.ts";
import { pairedDifference } from "../../../sim/statistics/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../support/workedSample.ts";

const THROUGHPUT: ResponseInfo = {
  key: "headsPerHour",
  label: "Throughput",
  unit: "carcasses/h",
  format: "number",
  better: "more",
};
const FINISH: ResponseInfo = { key: "finish", label: "Last head out", unit: "s", format: "clock", better: "less" };

describe("pairedDifference", () => {
  it("gives the paired interval of the worked sample (recomputed with SciPy)", () => {
    const found = pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95, THROUGHPUT)!;
    expect(found.n).toBe(10);
    expect(found.mean).toBeCloseTo(6.8, 12);
    expect(found.sd).toBeCloseTo(2.6583203, 7);
    expect(found.halfWidth).toBeCloseTo(1.9016478, 6);
    expect(found.low).toBeCloseTo(4.898352, 6);
    expect(found.high).toBeCloseTo(8.701648, 6);
    expect(found.relativeLow).toBeCloseTo(4.898352 / 606, 8);
    expect(found.shown).toBe(true);
  });

  it("says a shown difference with its size, interval, confidence and number of pairs", () => {
    expect(pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95, THROUGHPUT)!.words).toBe(
      "6.8 carcasses/h more than today's plan (+4.9 to +8.7 carcasses/h at 95 %; on the same 10 days).",
    );
  });

  it("turns its sign and its words when the two change places", () => {
    const there = pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95, THROUGHPUT)!;
    const back = pairedDifference(BASE_SAMPLE, VARIANT_SAMPLE, 0.95, THROUGHPUT)!;
    expect(back.low).toBeCloseTo(-there.high!, 12);
    expect(back.words).toMatch(/^6\.8 carcasses\/h less than today's plan/);
  });

  it("calls a difference whose interval holds 0 not distinguishable", () => {
    const found = pairedDifference([3, 1, 2, 2], [2, 2, 3, 1], 0.95, THROUGHPUT)!;
    expect(found.shown).toBe(false);
    expect(found.words).toMatch(/^No difference from today's plan shown \(-/);
  });

  it("drops a pair when either side is missing, and n tells", () => {
    const found = pairedDifference([1, null, 3, 9], [0, 1, null, 8], 0.9, THROUGHPUT)!;
    expect(found).toMatchObject({ n: 2, mean: 1 });
  });

  it("says that identical days are the same instead of inventing an interval", () => {
    const found = pairedDifference(BASE_SAMPLE, BASE_SAMPLE, 0.95, THROUGHPUT)!;
    expect(found).toMatchObject({ mean: 0, low: 0, high: 0, shown: false });
    expect(found.words).toBe("The same as today's plan on all 10 days.");
  });

  it("has no interval with one pair and no value with none", () => {
    const one = pairedDifference([5], [3], 0.95, THROUGHPUT)!;
    expect(one).toMatchObject({ n: 1, mean: 2, low: null, relativeLow: null, shown: false });
    expect(one.words).toMatch(/Not enough simulated days/);
    expect(pairedDifference([null], [3], 0.95, THROUGHPUT)).toBeNull();
  });

  it("gives no relative difference to a base of 0 nor to a time of day", () => {
    expect(pairedDifference([1, 2], [0, 0], 0.95, THROUGHPUT)).toMatchObject({ relativeLow: null, relativeHigh: null });
    expect(pairedDifference([100, 101], [40, 42], 0.95, FINISH)).toMatchObject({ relativeLow: null });
  });

  it("says later and earlier of a time of day", () => {
    expect(pairedDifference([700, 701], [100, 100], 0.95, FINISH)!.words).toMatch(
      /^10\.01 min later than today's plan/,
    );
    expect(pairedDifference([100, 100], [700, 701], 0.95, FINISH)!.words).toMatch(
      /^10\.01 min earlier than today's plan/,
    );
  });

  it("refuses lists that are no pairs", () => {
    expect(() => pairedDifference([1], [1, 2], 0.95, THROUGHPUT)).toThrow(/pairs/);
  });
});

it("takes values that agree to 12 digits as equal: what is left is the rounding of their arithmetic", () => {
  const info = { key: "k", label: "k", unit: "", format: "number", better: null } as const;
  const base = [100, 200, 300];
  const same = base.map((value) => value * (1 + 2e-13));
  expect(pairedDifference(same, base, 0.95, info)).toMatchObject({ mean: 0, low: 0, high: 0, shown: false });
  const other = base.map((value) => value * (1 + 2e-9));
  expect(pairedDifference(other, base, 0.95, info)!.mean).toBeGreaterThan(0);
});
