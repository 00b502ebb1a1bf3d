import { expect, it } from "vitest";
import { crossflowNusselt } from "../../../../sim/maths/chilling/index.ts";

it("is 0.3 in still air and rises with both numbers", () => {
  expect(crossflowNusselt(0, 0.7)).toBeCloseTo(0.3, 15);
  expect(crossflowNusselt(2000, 0.7)).toBeGreaterThan(crossflowNusselt(1900, 0.7));
  expect(crossflowNusselt(2000, 0.72)).toBeGreaterThan(crossflowNusselt(2000, 0.7));
});

it("stays within its 20 % of Hilpert's 0.193 Re^0.618 Pr^(1/3) for Reynolds numbers 4,000 to 40,000 (Incropera and DeWitt, table 7.2, from memory)", () => {
  for (const reynolds of [5000, 10_000, 20_000, 35_000]) {
    const hilpert = 0.193 * reynolds ** 0.618 * Math.cbrt(0.71);
    expect(Math.abs(crossflowNusselt(reynolds, 0.71) / hilpert - 1)).toBeLessThan(0.2);
  }
});
