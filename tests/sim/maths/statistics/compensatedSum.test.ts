import { expect, it } from "vitest";
import { compensatedSum } from "../../../../sim/maths/statistics/index.ts";

it("an empty sum is 0", () => {
  expect(compensatedSum([])).toBe(0);
});

it("keeps what plain addition loses (the example of Neumaier 1974)", () => {
  expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
});

it("adds ten million tenths to the last digit", () => {
  const tenths = new Array<number>(1e7).fill(0.1);
  expect(compensatedSum(tenths)).toBe(1e6);
  expect(tenths.reduce((sum, value) => sum + value, 0)).not.toBe(1e6);
});

it("passes infinity on instead of turning it into no number", () => {
  expect(compensatedSum([1, Number.POSITIVE_INFINITY])).toBe(Number.POSITIVE_INFINITY);
});
