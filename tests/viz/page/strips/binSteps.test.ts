import { expect, it } from "vitest";
import { binMeans, binShares } from "../../../../viz/page/strips/binSteps.ts";

/** One list: 0 until 2, then 4 until 5, then 1. */
const STEPS = {
  from: Int32Array.of(0, 3),
  times: Float64Array.of(0, 2, 5),
  values: Float64Array.of(0, 4, 1),
};

it("averages a step function over equal bins, worked by hand", () => {
  expect([...binMeans(STEPS, 0, 8, 2)]).toEqual([2, 1.75]);
  expect([...binMeans(STEPS, 0, 8, 8)]).toEqual([0, 0, 4, 4, 4, 1, 1, 1]);
  const late = binMeans({ ...STEPS, times: Float64Array.of(3, 4, 5) }, 0, 6, 2);
  expect(late[0]).toBe(0);
  expect(late[1]).toBeCloseTo(5 / 3, 12);
});

it("tells the share of the positions' time in each state, adding up to 1", () => {
  const states = { from: Int32Array.of(0, 2, 3), times: Float64Array.of(0, 3, 0), values: Float64Array.of(0, 1, 1) };
  const shares = binShares(states, 0, 2, { end: 6, bins: 2, states: 2 });
  expect(shares.map((share) => [...share])).toEqual([
    [0.5, 0],
    [0.5, 1],
  ]);
});
