import { expect, it } from "vitest";
import { type DayCourse, recordCourse } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { formatClock } from "../../../../sim/text/units/index.ts";
import { runningDifference, runningDifferenceWords } from "../../../../viz/page/scene/runningDifference.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";

/** One head every `seconds`, the first one done then. */
const every = (seconds: number, heads = 50) =>
  recordCourse(compileLine(planOf(saturated(heads), [station("only", seconds)])), { seed: "1", replication: 0 });

it("tells how many heads the variant is ahead, and how much earlier it had as many as the base has", () => {
  // After 60 s the one has done 6, the other 10; the faster one had 6 after 36 s.
  expect(runningDifference(every(10), every(6), 60)).toEqual({
    heads: 4,
    seconds: 24,
    base: 6,
    variant: 10,
    ends: null,
  });
  expect(runningDifference(every(6), every(10), 60)).toEqual({
    heads: -4,
    seconds: -24,
    base: 10,
    variant: 6,
    ends: null,
  });
  expect(runningDifference(every(6), every(6), 60)).toMatchObject({ heads: 0, seconds: 0 });
  // Before the first head is done nothing can be told.
  expect(runningDifference(every(10), every(6), 3)).toEqual({ heads: 0, seconds: 0, base: 0, variant: 0, ends: null });
});

it("says so in words", () => {
  const so = (heads: number, seconds: number) =>
    runningDifferenceWords({ heads, seconds, base: 6, variant: 6 + heads, ends: null });
  expect(so(4, 24)).toBe("The variant is 4 heads, 24 s ahead.");
  expect(so(-1, -0.5)).toBe("The variant is 1 head behind.");
  expect(so(0, 0)).toBe("Both lines are level.");
});

it("closes with how the day came out, once both lines have done all their work and not before", () => {
  // 50 heads: the one ends work after 3,000 s, the other after 1,500 s.
  const [slow, fast] = [every(60), every(30)];
  const words = (base: DayCourse, variant: DayCourse, seconds: number) =>
    runningDifferenceWords(runningDifference(base, variant, seconds));
  expect(words(slow, fast, 2999)).toMatch(/^The variant is \d+ heads?, .* ahead\.$/);
  const [late, early] = [slow, fast].map(({ record }) =>
    formatClock(record.startClockSeconds + record.workFinishSeconds),
  );
  expect(words(slow, fast, 3000)).toBe(`The variant ended work 25 min earlier: ${early}, not ${late}.`);
  expect(words(fast, slow, 3000)).toBe(`The variant ended work 25 min later: ${late}, not ${early}.`);
  expect(words(fast, fast, 3000)).toBe(`Both lines ended work at ${early}.`);
  expect(words(every(60), every(30, 49), 3000)).toMatch(/ It did 1 head fewer\.$/);
});
