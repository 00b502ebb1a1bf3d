import { expect, it } from "vitest";
import { Outstanding } from "../../../../../sim/days/run/queue/outstanding.ts";

const BATCH = { variant: 1, first: 4, count: 2 };

function outstanding(): Outstanding {
  const found = new Outstanding();
  found.add("task", BATCH);
  return found;
}

function day(variant: number, replication: number) {
  return { variant, replication, values: [], day: null };
}

it("settles a task with its first answer and passes over a second one, and answers to tasks of others", () => {
  const tasks = outstanding();
  const answer = { task: "task", days: [day(1, 4), day(1, 5)], failed: [] };
  expect(tasks.settle({ ...answer, task: "of another study" })).toBeNull();
  expect(tasks.settle(answer)).toEqual({ days: answer.days, failed: [] });
  expect(tasks.settle(answer)).toBeNull();
  expect(tasks.size).toBe(0);
});

it("passes over days of other tasks and counts days that nobody spoke of as failed", () => {
  const answer = { task: "task", days: [day(1, 3), day(0, 4), day(1, 5), day(1, 6)], failed: [] };
  expect(outstanding().settle(answer)).toEqual({
    days: [day(1, 5)],
    failed: [{ variant: 1, replication: 4, message: "a worker did not say what became of it" }],
  });
});

it("counts every day of a task that failed as a whole as failed, with its message", () => {
  const { days, failed } = outstanding().settle({ task: "task", error: "out of memory" })!;
  expect(days).toEqual([]);
  expect(failed.map(({ replication, message }) => [replication, message])).toEqual([
    [4, "out of memory"],
    [5, "out of memory"],
  ]);
});
