import { expect, it } from "vitest";
import { intervalDecimals } from "../../../../sim/text/units/index.ts";

it.each([
  // Taylor 1997, section 2.2: one significant digit of the uncertainty, two where it begins with a 1.
  [0.034, 2],
  [0.02, 2],
  [0.019, 3],
  [0.14, 2],
  [0.9, 1],
  [1.4, 1],
  [3, 0],
  [25, 0],
  [530, -1],
  [1200, -2],
])("writes a half-width of %s with %s decimals", (halfWidth, decimals) => {
  expect(intervalDecimals(halfWidth)).toBe(decimals);
});
