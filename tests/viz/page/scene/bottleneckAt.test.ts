import { expect, it } from "vitest";
import { recordCourse } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { bottleneckAt } from "../../../../viz/page/scene/bottleneckAt.ts";
import { constant, planOf, station, stream } from "../../../support/plans.ts";

it("marks the station that is active longest, and none before work begins or after it ends", () => {
  // Heads every 6 s; the second station takes 10 s a head and never rests from 10 s on, the first one rests 2 s of 6.
  const line = [station("first", 4, { buffer: 1 }), station("second", 10, { buffer: 9 })];
  const course = recordCourse(compileLine(planOf(stream(constant(6), 8), line)), { seed: "1", replication: 0 });
  const second = course.sketch.stages.findIndex(({ name }) => name === "second");
  expect(bottleneckAt(course, 40)).toEqual([second]);
  expect(bottleneckAt(course, 3)).toEqual([]);
  expect(bottleneckAt(course, course.record.finishSeconds + 1)).toEqual([]);
  expect(bottleneckAt({ ...course, record: { ...course.record, binding: null } }, 40)).toEqual([]);
});
