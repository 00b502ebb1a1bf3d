import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("counts throughput from the first shift's start to the end of the last work", () => {
  expect(values.headsPerHour).toBe(480);
});

it("reads the day's output and end", () => {
  expect(values).toMatchObject({ carcasses: 960, finish: 9000, overtime: 1800, unfinished: 0 });
});

it("has no throughput for a day that ended before its first shift", () => {
  expect(measure({ ...handMadeDay(), workFinishSeconds: 1800 }, HAND_MADE_PLAN).headsPerHour).toBeNull();
});

it("has no overtime, rather than a negative one, when the day ends early", () => {
  expect(measure({ ...handMadeDay(), workFinishSeconds: 7000 }, HAND_MADE_PLAN).overtime).toBe(0);
});

it("lets cleaning follow the last work and count as overtime", () => {
  const plan = { ...HAND_MADE_PLAN, day: { ...HAND_MADE_PLAN.day, cleaning: { seconds: 900, crews: ["dressing"] } } };
  expect(measure(handMadeDay(), plan)).toMatchObject({ cleaningEnd: 9900, overtime: 2700 });
  expect(values).not.toHaveProperty("cleaningEnd");
});

it.each(["ceiling", "stuck"] as const)("marks a day that ended as %s", (status) => {
  expect(measure({ ...handMadeDay(), status }, HAND_MADE_PLAN).unfinished).toBe(1);
});

it("has no time in system when no carcass left", () => {
  const day = handMadeDay();
  const none = { ...day, timeInSystem: { ...day.timeInSystem, count: 0 } };
  expect(measure(none, HAND_MADE_PLAN)["timeInSystem.mean"]).toBeNull();
});
