import { describe, expect, it } from "vitest";
import { studentQuantile } from "../../../../sim/maths/statistics/index.ts";
import { cephes } from "../../../support/cephes.ts";

/** One-sided 0.95, 0.975, 0.995; the t table of any statistics text, digits recomputed with SciPy. */
const TABLE: [df: number, ...quantiles: number[]][] = [
  [1, 6.313752, 12.706205, 63.656741],
  [2, 2.919986, 4.302653, 9.924843],
  [4, 2.131847, 2.776445, 4.604095],
  [9, 1.833113, 2.262157, 3.249836],
  [19, 1.729133, 2.093024, 2.860935],
  [29, 1.699127, 2.04523, 2.756386],
  [99, 1.660391, 1.984217, 2.626405],
];

describe("studentQuantile", () => {
  it.each(TABLE)("agrees with the printed table at %i degrees of freedom", (df, ...quantiles) => {
    const found = [0.95, 0.975, 0.995].map((p) => studentQuantile(p, df));
    found.forEach((value, index) => {
      // Half a unit of the last printed digit, and the function's own stated error.
      expect(Math.abs(value - quantiles[index]!)).toBeLessThan(5e-7 + 1e-7 * value);
    });
  });

  it("gives Bonferroni's t for four comparisons at 95 % and 9 degrees of freedom: 3.110935 (SciPy)", () => {
    expect(Math.abs(studentQuantile(1 - 0.05 / 8, 9) - 3.110935)).toBeLessThan(1e-6);
  });

  it("stays within its stated error of the Cephes library over its whole range", () => {
    let worst = 0;
    for (let p = 0.55; p < 0.999999; p = 1 - (1 - p) * 0.9) {
      for (let df = 1; df < 20000; df = df < 40 ? df + 1 : Math.round(df * 1.3)) {
        worst = Math.max(worst, Math.abs(studentQuantile(p, df) / cephes.stdtri(df, p) - 1));
      }
    }
    expect(worst).toBeLessThan(1e-7);
    expect(worst).toBeGreaterThan(0);
  });

  it("is odd around one half, where it is 0", () => {
    expect(studentQuantile(0.5, 7)).toBe(0);
    expect(studentQuantile(0.025, 9)).toBeCloseTo(-studentQuantile(0.975, 9), 12);
  });

  it.each([
    [0, 5],
    [1, 5],
    [Number.NaN, 5],
    [0.9, 0],
    [0.9, Number.NaN],
  ])("refuses p = %s with df = %s", (p, df) => {
    expect(() => studentQuantile(p, df)).toThrow(RangeError);
  });
});
