import { describe, expect, it } from "vitest";
import { annuityFactor, presentFactor } from "../../../sim/worth/index.ts";

describe("annuityFactor", () => {
  it("is the sum of the present factors of whole years, at any interest", () => {
    for (const interest of [0, 1e-9, 0.03, 0.4, -0.02]) {
      const sum = Array.from({ length: 12 }, (_, year) => presentFactor(interest, year + 1)).reduce((a, b) => a + b);
      expect(Math.abs(annuityFactor(interest, 12) / sum - 1)).toBeLessThan(1e-12);
    }
  });

  it("grows with years and never beyond 1 / interest", () => {
    expect(annuityFactor(0.1, 7.5)).toBeGreaterThan(annuityFactor(0.1, 7));
    expect(annuityFactor(0.1, 1e6)).toBeCloseTo(10, 12);
  });
});
