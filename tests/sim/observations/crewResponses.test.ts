import { expect, it } from "vitest";
import { measure } from "../../../sim/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("reads occupation and yield of the crew", () => {
  expect(values).toMatchObject({ "crew.dressing.occupation": 0.75, carcassesPerPersonHour: 120 });
});
