import { describe, expect, it } from "vitest";
import { annuityFactor, loanPayment } from "../../../../sim/maths/numeric/index.ts";
import { presentFactor } from "../../../../sim/questions/options/index.ts";

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

describe("loanPayment", () => {
  // i (1 + i)^n / ((1 + i)^n - 1), worked from the closed form to eight digits.
  it.each([
    [0.08, 10, 0.14902949],
    [0.05, 15, 0.09634229],
    [0.06, 8, 0.16103594],
    [0.1, 5, 0.26379748],
  ])("at %f over %i payments is %f of the loan", (interest, payments, expected) => {
    expect(loanPayment(interest, payments)).toBeCloseTo(expected, 8);
  });

  // The example of NumPy's documentation of pmt (from memory): 200 000 at 7.5 % a year over 15 years, monthly.
  it("is 1854.02 a month for 200 000 at 7.5 % over 180 months", () => {
    expect(200_000 * loanPayment(0.075 / 12, 180)).toBeCloseTo(1854.02472, 5);
  });

  it("is the loan in equal parts without interest", () => {
    expect(loanPayment(0, 40)).toBe(1 / 40);
  });
});
