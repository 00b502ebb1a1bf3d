import { describe, expect, it } from "vitest";
import { quantileRanks } from "../../../../sim/maths/statistics/index.ts";
import { logBinomial } from "../../../../sim/maths/statistics/quantileRanks.ts";

describe("quantileRanks", () => {
  it("encloses the median of 20 values by the 6th and the 15th, exact cover 0.958611 (binomial, Conover 1999)", () => {
    const found = quantileRanks(20, 0.5, 0.95)!;
    expect(found).toMatchObject({ low: 6, high: 15 });
    expect(found.cover).toBeCloseTo(0.958611, 6);
  });

  it("encloses the 0.9 quantile of 100 values by the 84th and the 96th, exact cover 0.955690", () => {
    const found = quantileRanks(100, 0.9, 0.95)!;
    expect(found).toMatchObject({ low: 84, high: 96 });
    expect(found.cover).toBeCloseTo(0.95569, 6);
  });

  it.each([
    // SciPy's binomial distribution, same rule.
    [6, 0.5, 0.95, 1, 6, 0.96875],
    [1000, 0.95, 0.95, 936, 964, 0.958095268],
    [59, 0.95, 0.9, 53, 59, 0.924133617],
    [200, 0.05, 0.99, 3, 20, 0.994999126],
  ])("agrees with SciPy for n = %i, p = %s at %s", (n, p, confidence, low, high, cover) => {
    const found = quantileRanks(n, p, confidence)!;
    expect(found).toMatchObject({ low, high });
    expect(found.cover).toBeCloseTo(cover, 8);
  });

  it("covers at least what was asked for, over many sizes", () => {
    for (let n = 6; n <= 300; n++) expect(quantileRanks(n, 0.5, 0.95)!.cover).toBeGreaterThanOrEqual(0.95);
  });

  it("says that five values are not enough for a 95 % interval of the median", () => {
    expect(quantileRanks(5, 0.5, 0.95)).toBeNull();
    expect(quantileRanks(0, 0.5, 0.95)).toBeNull();
  });

  it("refuses a quantile or confidence outside 0 to 1", () => {
    expect(() => quantileRanks(10, 1, 0.95)).toThrow(RangeError);
    expect(() => quantileRanks(10, 0.5, 95)).toThrow(RangeError);
  });
});

it("is the logarithm of the entry in Pascal's triangle", () => {
  expect(Math.exp(logBinomial(10, 3))).toBeCloseTo(120, 9);
  expect(logBinomial(10, 0)).toBeCloseTo(0, 12);
  expect(logBinomial(10, 10)).toBeCloseTo(0, 12);
});

it("works where the factorials themselves overflow", () => {
  // Pascal's rule: C(1000, 500) = 2 C(999, 499).
  expect(logBinomial(1000, 500) - logBinomial(999, 499)).toBeCloseTo(Math.log(2), 9);
});
