import { expect, it } from "vitest";
import { recordCourse } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { TaskCancelled } from "../../../../viz/page/worker/messages.ts";
import { TaskHandler } from "../../../../viz/page/worker/taskHandler.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";

const plan = planOf(saturated(3000), [station("one", 4, { buffer: 3 }), station("two", 4)]);
const course = { kind: "course", plan, seed: "answer", replication: 0 } as const;

it("stops recording a day once nobody wants it", async () => {
  let looks = 0;
  const answer = new TaskHandler().answer(course, () => ++looks < 2);
  await expect(answer).rejects.toThrow(TaskCancelled);
  expect(looks).toBe(2);
});

it("gives the whole day where it is wanted to the end", async () => {
  expect(await new TaskHandler().answer(course)).toEqual(recordCourse(compileLine(plan), course));
});
