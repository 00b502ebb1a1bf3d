import { expect, test } from "vitest";
import { decimalsFor, formatDecimals } from "../../../../sim/text/units/index.ts";

// Groups of three parted by a small space, no comma: ISO 80000-1:2022 / BIPM SI Brochure (9th ed.) 5.4.4.
test("formatDecimals parts thousands by a thin no-break space", () => {
  expect(formatDecimals(1234567, 0)).toBe("1\u202F234\u202F567");
  expect(formatDecimals(4730.25, 1)).toBe("4\u202F730.3");
  expect(formatDecimals(999, 0)).toBe("999");
});

test("formatDecimals writes a true minus sign and never minus zero", () => {
  expect(formatDecimals(-4.24, 1)).toBe("\u22124.2");
  expect(formatDecimals(-0.04, 1)).toBe("0.0");
  expect(formatDecimals(-0, 0)).toBe("0");
});

test("formatDecimals rounds to tens and hundreds with negative decimals", () => {
  expect(formatDecimals(1449, -2)).toBe("1\u202F400");
  expect(formatDecimals(-1451, -1)).toBe("\u22121\u202F450");
});

test("formatDecimals tells not known and no limit apart from numbers", () => {
  expect(formatDecimals(Number.NaN, 1)).toBe("not known");
  expect(formatDecimals(Number.POSITIVE_INFINITY, 1)).toBe("no limit");
});

test("decimalsFor shows two significant digits of the resolution", () => {
  expect([0.034, 0.1, 4.2, 9.99, 10, 53, 530].map((r) => decimalsFor(r))).toEqual([3, 2, 1, 1, 0, 0, -1]);
});

test("decimalsFor falls back where the resolution says nothing", () => {
  expect([0, Number.NaN, Number.POSITIVE_INFINITY].map((r) => decimalsFor(r, 2))).toEqual([2, 2, 2]);
});
