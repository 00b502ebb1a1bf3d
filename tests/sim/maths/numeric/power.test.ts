import { describe, expect, it } from "vitest";
import { power } from "../../../../sim/maths/numeric/index.ts";
import { relativeError } from "../../../support/relativeError.ts";

describe("power", () => {
  // Worked out with 60 digits by Python's decimal module: Decimal(base) ** Decimal(exponent).
  it.each([
    [3, 0.5, 1.7320508075688772],
    [10, 0.1, 1.2589254117941673],
    [0.001, 1.7, 7.943282347242818e-6],
    [37.5, -2.25, 0.0002873622051095642],
    [1e-16, 0.05, 0.15848931924611134],
    [40, 20.5, 6.953922115222831e32],
    [1.0000001, 1e6, 1.1051709126143208],
  ])("is %s to the power of %s, as near as it says", (base, exponent, expected) => {
    const bound = 3e-16 * (2 + Math.abs(exponent * Math.log(base)));
    expect(relativeError(power(base, exponent), expected)).toBeLessThan(bound);
  });

  it.each([
    [3, 4, 81],
    [-2, 3, -8],
    [-2, 10, 1024],
    [2, -2, 0.25],
    [7.3, 0, 1],
    [0, 0, 1],
    [0, 2.5, 0],
    [0, -1, Infinity],
    [1.5, 1, 1.5],
  ])("is exact for %s to the power of %s", (base, exponent, expected) => {
    expect(power(base, exponent)).toBe(expected);
  });

  it("is NaN where a root of a number below 0 is asked for", () => {
    expect(power(-2, 0.5)).toBeNaN();
  });
});
