import { expect, it } from "vitest";
import { presentFactor } from "../../../../sim/questions/options/index.ts";

// Present value at 10 % of -10 000 now, then 3000, 4200, 6800 at the ends of three years, worked from the closed form.
it("takes money to today", () => {
  const value = [-10_000, 3000, 4200, 6800].reduce((sum, paid, year) => sum + paid * presentFactor(0.1, year), 0);
  expect(value).toBeCloseTo(1307.287754, 6);
});
