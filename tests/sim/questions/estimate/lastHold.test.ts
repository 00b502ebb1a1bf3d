import { expect, it } from "vitest";
import { lastDwells, lastHold } from "../../../../sim/questions/estimate/lastHold.ts";
import { dwell, planOf, saturated, station } from "../../../support/plans.ts";

it("lastHold is the narrowest dwell behind the last station that has a limit", () => {
  const line = [
    station("a", 1),
    dwell("bleeding", 90, 1),
    station("b", 1),
    dwell("first", 100, 50),
    dwell("second", 200, 60),
    dwell("yard", 9, Infinity),
  ];
  const plan = planOf(saturated(9), line);
  expect(lastDwells(plan)).toEqual(["first", "second", "yard"]);
  expect(lastHold(plan, 0.1)).toEqual({ name: "second", places: 60, seconds: 200 });
  expect(lastHold(planOf(saturated(9), [station("a", 1)]), 0.1)).toBeNull();
});
