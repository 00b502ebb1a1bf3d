import { expect, it } from "vitest";
import { logBinomial } from "../../../../sim/maths/statistics/logBinomial.ts";

it("is the logarithm of the entry in Pascal's triangle", () => {
  expect(Math.exp(logBinomial(10, 3))).toBeCloseTo(120, 9);
  expect(logBinomial(10, 0)).toBeCloseTo(0, 12);
  expect(logBinomial(10, 10)).toBeCloseTo(0, 12);
});

it("works where the factorials themselves overflow", () => {
  // Pascal's rule: C(1000, 500) = 2 C(999, 499).
  expect(logBinomial(1000, 500) - logBinomial(999, 499)).toBeCloseTo(Math.log(2), 9);
});
