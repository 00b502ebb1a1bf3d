import { expect, it } from "vitest";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

it("gives hours on duty, hours paid (22 + 3 + 7 + 1) and those of overtime", () => {
  const { personHours, paidHours, overtimeHours } = measure(wholeDay(), WHOLE_PLAN);
  expect(personHours).toBeCloseTo((84_000 + 28_800) / 3600, 12);
  expect(paidHours).toBe(33);
  expect(overtimeHours).toBe(4);
});

it("is silent without crews", () => {
  const keys = responsesOf({ ...WHOLE_PLAN, crews: [] }).map(({ key }) => key);
  expect(keys.filter((key) => key.endsWith("Hours"))).toEqual([]);
});
