import { expect, test } from "vitest";
import { differenceEnds } from "../../../viz/words/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("the interval of all comparisons at once is shown where the verdict answers for all of them", () => {
  const difference = { ...syntheticStudy().variants[1]!.differences!.throughput!, familyLow: 1, familyHigh: 7 };
  const { halfWidth, low, high } = difference;
  expect(differenceEnds(difference)).toEqual({ halfWidth, low, high });
  expect(differenceEnds({ ...difference, joint: true })).toEqual({ halfWidth: 3, low: 1, high: 7 });
});
