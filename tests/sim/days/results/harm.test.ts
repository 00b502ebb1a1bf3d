import { expect, test } from "vitest";
import type { TimeLimit } from "../../../../sim/asked/plan/index.ts";
import { harmOf, harmResponses } from "../../../../sim/days/results/harm.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";

const LIMIT: TimeLimit = {
  name: "wait",
  from: { stage: "a", moment: "end" },
  to: { stage: "b", moment: "start" },
  minSeconds: null,
  maxSeconds: 100,
  source: "invented",
};
const plan = (limit: Partial<TimeLimit> = {}) =>
  planOf(saturated(10), [station("a", 1), station("b", 1)], { limits: [{ ...LIMIT, ...limit }] });
const days = (share: number[], worst: number[], heads = [500, 500, 500, 500, 500]) => ({
  "beyond.wait": share,
  "worst.wait": worst,
  carcasses: heads,
  unfinished: heads.map(() => 0),
});
const TODAY = days([0.1, 0.11, 0.09, 0.1, 0.1], [150, 160, 140, 150, 150]);

test("as many heads outside and none further out is no harm", () => {
  expect(harmOf(plan(), TODAY, TODAY)).toBeNull();
  expect(harmOf(plan(), TODAY, days([0.05, 0.06, 0.04, 0.05, 0.05], [150, 155, 140, 150, 149]))).toBeNull();
});

test("more heads outside, day by day, is harm, told with both shares", () => {
  expect(harmOf(plan(), TODAY, days([0.12, 0.13, 0.1, 0.12, 0.12], [150, 160, 140, 150, 150]))).toBe(
    "11.8 % instead of 10.0 % of heads would be outside the limit 'wait'",
  );
});

test("a worst head further outside is harm; within the limit a longer time is not", () => {
  expect(harmOf(plan(), TODAY, days([0.1, 0.11, 0.09, 0.1, 0.1], [180, 190, 171, 180, 179]))).toBe(
    "the worst head of a day would be 30 s further outside the limit 'wait'",
  );
  const inside = days([0, 0, 0, 0, 0], [50, 50, 50, 50, 50]);
  expect(harmOf(plan(), inside, days([0, 0, 0, 0, 0], [90, 95, 90, 92, 91]))).toBeNull();
});

test("a shorter time is further outside where the limit is a minimum", () => {
  const least = plan({ minSeconds: 100, maxSeconds: null });
  const today = days([0.1, 0.1, 0.1, 0.1, 0.1], [90, 91, 90, 89, 90]);
  expect(harmOf(least, today, days([0.1, 0.1, 0.1, 0.1, 0.1], [70, 71, 70, 69, 70]))).toContain("20 s further outside");
});

test("fewer heads, and days that do not end any more, are harm", () => {
  const fewer = days([0.1, 0.11, 0.09, 0.1, 0.1], [150, 160, 140, 150, 150], [480, 481, 479, 480, 480]);
  expect(harmOf(plan(), TODAY, fewer)).toBe("it handles 20 fewer heads a day");
  expect(harmOf(plan(), TODAY, { ...TODAY, unfinished: [0, 0, 1, 0, 0] })).toBe("its days did not end by themselves");
});

test("a day on which no head passed the limit breaks nothing", () => {
  const none = {
    ...TODAY,
    "beyond.wait": [null, null, null, null, null],
    "worst.wait": [null, null, null, null, null],
  };
  expect(harmOf(plan(), TODAY, none)).toBeNull();
  expect(harmOf(plan(), none, TODAY)).toContain("10 % instead of 0 %");
});

test("of each day the limit's share and worst head have to be known", () => {
  expect(harmResponses(plan())).toEqual(["carcasses", "beyond.wait", "worst.wait"]);
  expect(harmResponses(plan({ minSeconds: 5 }))).toEqual(["carcasses", "beyond.wait", "worst.wait", "shortest.wait"]);
});
