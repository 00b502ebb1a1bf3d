import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("reads work in process by section", () => {
  expect(values).toMatchObject({
    "wip.dressing.mean": 4.25,
    "wip.dressing.max": 7,
    "wip.chilling.mean": 61,
    "wip.chilling.max": 90,
  });
});
