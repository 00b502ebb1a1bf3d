import { expect, it } from "vitest";
import { normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import { cephes } from "../../../support/cephes.ts";

it("stays within its stated error of the Cephes library", () => {
  let worst = 0;
  for (let p = 0.51; p < 0.9999999; p = 1 - (1 - p) * 0.97) {
    worst = Math.max(worst, Math.abs(normalQuantile(p) / cephes.ndtri(p) - 1));
  }
  expect(worst).toBeLessThan(1e-9);
});

it("is odd around one half and 1.959964 at 0.975", () => {
  expect(normalQuantile(0.5)).toBe(0);
  expect(normalQuantile(0.975)).toBeCloseTo(1.959964, 6);
  expect(normalQuantile(0.025)).toBeCloseTo(-1.959964, 6);
});

it.each([0, 1, Number.NaN])("refuses p = %s", (p) => {
  expect(() => normalQuantile(p)).toThrow(RangeError);
});
