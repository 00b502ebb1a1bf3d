import { expect, it } from "vitest";
import { quantileInterval } from "../../../../sim/maths/statistics/index.ts";

it("takes the bounds from the order statistics, whatever the order of the values", () => {
  const values = Object.freeze(Array.from({ length: 20 }, (_, index) => ((index * 7) % 20) + 1));
  expect(quantileInterval(values, 0.5, 0.95)).toMatchObject({ n: 20, value: 10.5, low: 6, high: 15 });
});

it("tells no values from not enough values", () => {
  expect(quantileInterval([null], 0.5, 0.95)).toBeNull();
  expect(quantileInterval([4, null, 6], 0.5, 0.95)).toEqual({ n: 2, value: 5, low: null, high: null, cover: null });
});
