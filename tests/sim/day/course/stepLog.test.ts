import { describe, expect, it } from "vitest";
import { lastAtOrBefore, stepAt } from "../../../../sim/day/course/index.ts";
import { StepLog } from "../../../../sim/day/course/stepLog.ts";

describe("StepLog", () => {
  it("keeps each list's own changes in order, and drops values held for no time or not changed", () => {
    const log = new StepLog(3);
    log.set(1, 0, 5);
    log.set(0, 0, 1);
    log.set(1, 2, 6);
    log.set(1, 2, 7);
    log.set(1, 3, 7);
    log.set(0, 9, 2);
    const steps = log.steps();
    expect([...steps.from]).toEqual([0, 2, 4, 4]);
    expect([...steps.times]).toEqual([0, 9, 0, 2]);
    expect([...steps.values]).toEqual([1, 2, 5, 7]);
    expect([-1, 0, 1.9, 2, 50].map((at) => stepAt(steps, 1, at, -9))).toEqual([-9, 5, 5, 7, 7]);
    expect(stepAt(steps, 2, 4, 3)).toBe(3);
  });

  it("grows with what is written", () => {
    const log = new StepLog(1);
    for (let row = 0; row < 5000; row++) log.set(0, row, row % 7);
    expect(log.steps().times).toHaveLength(5000);
  });
});

it("lastAtOrBefore finds the last time that is not later, in the part it is given", () => {
  const times = Float64Array.of(1, 3, 3, 8);
  expect([0, 1, 2, 3, 7, 8, 9].map((at) => lastAtOrBefore(times, at))).toEqual([-1, 0, 0, 2, 2, 3, 3]);
  expect(lastAtOrBefore(times, 5, 3, 4)).toBe(-1);
  expect(lastAtOrBefore(new Float64Array(0), 5)).toBe(-1);
});
