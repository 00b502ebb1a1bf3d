import { describe, expect, it } from "vitest";
import { kimNelsonConstants } from "../../../../sim/maths/statistics/index.ts";

describe("kimNelsonConstants (Kim and Nelson 2001)", () => {
  it.each([
    // From the closed form in exact arithmetic; the form from memory.
    [2, 10, 0.05, 0.33405, 6.012905],
    [5, 10, 0.05, 0.634967, 11.429411],
    [10, 20, 0.05, 0.302934, 11.511485],
  ])("gives eta and h^2 for k = %i, n0 = %i, alpha %s", (k, n0, alpha, eta, hSquared) => {
    const found = kimNelsonConstants(k, n0, alpha);
    expect(Math.abs(found.eta - eta)).toBeLessThan(6e-7);
    expect(Math.abs(found.hSquared - hSquared)).toBeLessThan(6e-7);
  });

  it("solves the paper's equation (1 + 2 eta)^(-(n0 - 1)/2) / 2 = alpha / (k - 1)", () => {
    for (const k of [2, 3, 7, 40]) {
      for (const n0 of [2, 5, 10, 50]) {
        const { eta } = kimNelsonConstants(k, n0, 0.1);
        expect(0.5 * (1 + 2 * eta) ** (-(n0 - 1) / 2)).toBeCloseTo(0.1 / (k - 1), 12);
      }
    }
  });

  it.each([
    [1, 10, 0.05],
    [2, 1, 0.05],
    [2, 10, 0],
    [2, 10, 0.5],
    [3, 10, 1],
  ])("refuses k = %i, n0 = %i, alpha %s", (k, n0, alpha) => {
    expect(() => kimNelsonConstants(k, n0, alpha)).toThrow(RangeError);
  });
});
