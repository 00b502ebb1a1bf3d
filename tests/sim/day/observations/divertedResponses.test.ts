import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

it("gives shares of all 1000 heads that came to the machine: 20 passed unworked, 49 were sent to trim", () => {
  const values = measure(wholeDay(), WHOLE_PLAN);
  expect(values).toMatchObject({ "outsideWeights.skinning": 0.02, "diverted.skinning": 0.049 });
});

it("speaks only of stages that can do so", () => {
  const keys = Object.keys(measure(wholeDay(), WHOLE_PLAN));
  expect(keys.filter((key) => /^(outsideWeights|diverted)\./.test(key))).toHaveLength(2);
});
