import { describe, expect, it } from "vitest";
import { fitControls } from "../../../../sim/maths/statistics/fitControls.ts";

describe("fitControls", () => {
  it("fits one control by hand", () => {
    // x - known mean: -1 0 1 2 (mean 0.5), y: 1 3 2 6 (mean 3). Sxy = 7, Sxx = 5: slope 1.4, intercept 3 - 0.7 = 2.3.
    // Residuals: 0.1 0.7 -1.7 0.9, squares 4.2. Leverage 0.25/5.
    const fit = fitControls([1, 3, 2, 6], [[-1, 0, 1, 2]]);
    expect(fit.intercept).toBeCloseTo(2.3, 12);
    expect(fit.coefficients[0]).toBeCloseTo(1.4, 12);
    expect(fit.residualSquares).toBeCloseTo(4.2, 12);
    expect(fit.leverage).toBeCloseTo(0.05, 12);
  });

  it("finds the coefficients of an exact plane, whatever the controls have in common", () => {
    const one = [1, 2, 3, 4, 5, 7];
    const two = one.map((value, index) => value + [0.1, -0.2, 0.05, 0.3, -0.1, 0][index]!);
    const y = one.map((value, index) => 10 + 2 * value - 3 * two[index]!);
    const fit = fitControls(y, [one, two]);
    expect(fit.intercept).toBeCloseTo(10, 9);
    expect(fit.coefficients[0]).toBeCloseTo(2, 9);
    expect(fit.coefficients[1]).toBeCloseTo(-3, 9);
    expect(fit.residualSquares).toBeLessThan(1e-18);
  });

  it("leaves out a control that does not vary and one that repeats another", () => {
    const x = [1, 2, 4, 8, 9];
    const fit = fitControls([1, 2, 3, 5, 4], [[3, 3, 3, 3, 3], x, x.map((value) => 2 * value + 1)]);
    expect(fit.coefficients[0]).toBeNull();
    expect(fit.coefficients[1]).toBeCloseTo(fitControls([1, 2, 3, 5, 4], [x]).coefficients[0]!, 12);
    expect(fit.coefficients[2]).toBeNull();
  });
});
