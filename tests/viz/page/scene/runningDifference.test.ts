import { expect, it } from "vitest";
import { recordCourse } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { differenceWords, runningDifference } from "../../../../viz/page/scene/runningDifference.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";

/** One head every `seconds`, the first one done then. */
const every = (seconds: number) =>
  recordCourse(compileLine(planOf(saturated(50), [station("only", seconds)])), { seed: "1", replication: 0 });

it("tells how many heads the variant is ahead, and how much earlier it had as many as the base has", () => {
  // After 60 s the one has done 6, the other 10; the faster one had 6 after 36 s.
  expect(runningDifference(every(10), every(6), 60)).toEqual({ heads: 4, seconds: 24, base: 6, variant: 10 });
  expect(runningDifference(every(6), every(10), 60)).toEqual({ heads: -4, seconds: -24, base: 10, variant: 6 });
  expect(runningDifference(every(6), every(6), 60)).toMatchObject({ heads: 0, seconds: 0 });
  // Before the first head is done nothing can be told.
  expect(runningDifference(every(10), every(6), 3)).toEqual({ heads: 0, seconds: 0, base: 0, variant: 0 });
});

it("says so in words", () => {
  expect(differenceWords({ heads: 4, seconds: 24, base: 6, variant: 10 })).toBe("The variant is 4 heads, 24 s ahead.");
  expect(differenceWords({ heads: -1, seconds: -0.5, base: 6, variant: 5 })).toBe("The variant is 1 head behind.");
  expect(differenceWords({ heads: 0, seconds: 0, base: 6, variant: 6 })).toBe("Both lines are level.");
});
