import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatNumber } from "../../../../sim/text/units/formatNumber.ts";

describe("formatNumber", () => {
  it.each([
    [0, "0"],
    [-0, "0"],
    [1.234, "1.23"],
    [12.34, "12.3"],
    [123.4, "123"],
    [1234.5, "1235"],
    [-0.0456, "-0.0456"],
    [2.5, "2.5"],
    [99.96, "100"],
    [-0.4, "-0.4"],
  ])("writes %d as %s with three digits", (value, text) => {
    expect(formatNumber(value)).toBe(text);
  });

  it("takes another number of digits", () => {
    expect(formatNumber(1.23456, 5)).toBe("1.2346");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %d", (value) => {
    expect(() => formatNumber(value)).toThrow(RangeError);
  });

  it("is off by at most half a unit of the third digit", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-5, max: 1e12, noNaN: true }), (value) => {
        expect(Math.abs(Number(formatNumber(value)) - value)).toBeLessThanOrEqual(0.00501 * value);
      }),
      { seed: 3 },
    );
  });
});
