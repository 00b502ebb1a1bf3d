import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

it("tells a spill from stages that stood, as the plan has it", () => {
  const values = measure(wholeDay(), WHOLE_PLAN);
  expect(Object.fromEntries(Object.entries(values).filter(([key]) => key.startsWith("vessel.")))).toEqual({
    "vessel.blood tank.emptied": 3,
    "vessel.blood tank.max": 60,
    "vessel.blood tank.spilled": 4,
    "vessel.skin bin.emptied": 2,
    "vessel.skin bin.max": 90,
    "vessel.skin bin.full": 480,
  });
});
