import { describe, expect, it } from "vitest";
import { annuityFactor } from "../../../../sim/maths/numeric/index.ts";
import { appraise } from "../../../../sim/questions/options/index.ts";

const purchase = { price: 9000, lifeYears: 8, residual: 1000, servicePerYear: 200 };

describe("appraise", () => {
  it("discounts service, benefit and residual to their years", () => {
    const { presentValue, perYear } = appraise(purchase, 1700, 0.05);
    const flows = Array.from({ length: 8 }, (_, year) => (1500 + (year === 7 ? 1000 : 0)) / 1.05 ** (year + 1));
    expect(presentValue).toBeCloseTo(flows.reduce((a, b) => a + b) - 9000, 9);
    expect(perYear * annuityFactor(0.05, 8)).toBeCloseTo(presentValue, 9);
  });

  it("pays back without interest in price / net years, with interest later, and never without a benefit", () => {
    const { paybackYears, discountedPaybackYears } = appraise(purchase, 1700, 0.05);
    expect(paybackYears).toBe(6);
    expect(discountedPaybackYears).toBeGreaterThan(6);
    expect(1500 * annuityFactor(0.05, discountedPaybackYears)).toBeCloseTo(9000, 9);
    expect(appraise(purchase, 1700, 0).discountedPaybackYears).toBe(6);
    for (const benefit of [200, 0, -50]) {
      expect(appraise(purchase, benefit, 0.05)).toMatchObject({
        paybackYears: Infinity,
        discountedPaybackYears: Infinity,
      });
    }
  });

  it("never pays back when interest eats the benefit, and at once when nothing is to be paid", () => {
    expect(appraise(purchase, 600, 0.05).discountedPaybackYears).toBe(Number.POSITIVE_INFINITY);
    expect(appraise(purchase, 600, 0.05).paybackYears).toBe(22.5);
    expect(appraise({ ...purchase, price: 0 }, 100, 0.05)).toMatchObject({
      paybackYears: 0,
      discountedPaybackYears: 0,
    });
  });
});
