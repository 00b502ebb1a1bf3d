import { describe, expect, it } from "vitest";
import { studentQuantile, studentTwoSidedP } from "../../../../sim/maths/statistics/index.ts";
import { cephes } from "../../../support/cephes.ts";

describe("studentTwoSidedP", () => {
  it("gives the p-values of the worked sample, paired and unpaired (SciPy)", () => {
    expect(studentTwoSidedP(8.089126, 9)).toBeCloseTo(2.02576e-5, 9);
    expect(studentTwoSidedP(1.448449, 17.900885)).toBeCloseTo(0.164782, 6);
  });

  it("undoes the quantile, and both signs of t are one", () => {
    for (const df of [1, 2, 9, 30, 500]) {
      for (const p of [0.5, 0.1, 0.05, 0.001, 1e-6]) {
        const t = studentQuantile(1 - p / 2, df);
        expect(Math.abs(studentTwoSidedP(-t, df) / p - 1)).toBeLessThan(1e-5);
      }
    }
  });

  it("stays within its stated error of the Cephes library over its whole range", () => {
    let worst = 0;
    for (let t = 0.001; t < 60; t *= 1.2) {
      for (let df = 1; df < 20_000; df = df < 40 ? df + 1 : Math.round(df * 1.3)) {
        const expected = cephes.incbet(df / 2, 0.5, df / (df + t * t));
        if (expected > 1e-280) worst = Math.max(worst, Math.abs(studentTwoSidedP(t, df) / expected - 1));
      }
    }
    expect(worst).toBeLessThan(1e-6);
    expect(worst).toBeGreaterThan(0);
  });

  it.each([
    // Probability P* of the best of k lying ahead, first stage 20: Dudewicz and Dalal 1975 (Sankhya B 37), table in Law,
    // Simulation Modeling and Analysis, ch. 10 (three digits, from memory); the fourth from SciPy.
    [0.9, 2, 1.8957],
    [0.9, 3, 2.3423],
    [0.9, 5, 2.7471],
    [0.9, 10, 3.182],
    [0.95, 2, 2.4525],
    [0.95, 4, 3.1011],
    [0.95, 10, 3.6788],
  ])("integrates to P* = %s for k = %i at the tabled h = %s of Dudewicz and Dalal", async (pStar, k, h) => {
    const below = (t: number): number => (t > 0 ? 1 - studentTwoSidedP(t, 19) / 2 : studentTwoSidedP(t, 19) / 2);
    const constant = cephes.gamma(10) / (cephes.gamma(9.5) * Math.sqrt(19 * Math.PI));
    const density = (t: number): number => constant * (1 + (t * t) / 19) ** -10;
    let sum = 0;
    for (let step = -2000; step <= 2000; step++) sum += 0.01 * below(step / 100 + h) ** (k - 1) * density(step / 100);
    // Half a unit of the last digit of h, times a density of at most 0.4.
    expect(Math.abs(sum - pStar)).toBeLessThan(2e-5);
  });

  it("is 1 at 0, 0 at infinity, and refuses what is no number", () => {
    expect([studentTwoSidedP(0, 4), studentTwoSidedP(Number.POSITIVE_INFINITY, 4)]).toEqual([1, 0]);
    expect(() => studentTwoSidedP(Number.NaN, 4)).toThrow(RangeError);
    expect(() => studentTwoSidedP(1, 0)).toThrow(RangeError);
  });
});
