import { expect, it } from "vitest";
import { groupMeans } from "../../../../sim/maths/statistics/groupMeans.ts";
import { WARM_UP_SERIES } from "../../../support/warmUpSeries.ts";

it("groupMeans gives the twelve means of five of the worked series (by hand)", () => {
  expect(groupMeans(WARM_UP_SERIES, 5)).toEqual([1.4, 4.6, 6.8, 8, 8.6, 8.8, 8.6, 8.8, 8.6, 8.8, 8.8, 8.6]);
});

it("groupMeans leaves a rest out and refuses a size below 1", () => {
  expect(groupMeans([1, 3, 5], 2)).toEqual([2]);
  expect(groupMeans([1], 2)).toEqual([]);
  for (const size of [0, 1.5, Number.NaN]) expect(() => groupMeans([1], size)).toThrow(RangeError);
});
