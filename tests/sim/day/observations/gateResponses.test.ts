import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

it("gives the heads inside each gate and the time that its stage was held back", () => {
  const values = measure(wholeDay(), WHOLE_PLAN);
  expect(values).toMatchObject({ "gate.to sticking.mean": 1.25, "gate.to sticking.max": 2 });
  expect(values["held.stunning"]).toBeCloseTo(0.05, 12);
});

it("counts the stage that a safe stop holds back, and no other", () => {
  const values = measure(wholeDay(), WHOLE_PLAN);
  expect(values["held.skinning"]).toBeCloseTo(0.01, 12);
  expect(Object.keys(values).filter((key) => key.startsWith("held."))).toEqual(["held.stunning", "held.skinning"]);
});
