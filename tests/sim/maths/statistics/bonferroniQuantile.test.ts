import { expect, it } from "vitest";
import { bonferroniQuantile, studentQuantile } from "../../../../sim/maths/statistics/index.ts";

it("bonferroniQuantile gives t 3.110935 for four comparisons at 95 % and 9 degrees of freedom (SciPy)", () => {
  expect(Math.abs(bonferroniQuantile(4, 0.95, 9) - 3.110935)).toBeLessThan(1e-6);
});

it("bonferroniQuantile is Student's quantile for one comparison and grows with their number", () => {
  expect(bonferroniQuantile(1, 0.95, 9)).toBeCloseTo(studentQuantile(0.975, 9), 10);
  expect(bonferroniQuantile(5, 0.95, 9)).toBeGreaterThan(bonferroniQuantile(4, 0.95, 9));
  expect(() => bonferroniQuantile(0, 0.95, 9)).toThrow(RangeError);
});
