import { expect, it } from "vitest";
import { measure, measurer, responsesOf } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("has exactly the keys of responsesOf, in the same order", () => {
  expect(Object.keys(values)).toEqual(responsesOf(HAND_MADE_PLAN).map(({ key }) => key));
});

it("is read by keys, in their order, with null for what the plan does not have", () => {
  const keys = ["finish", "no such response", "headsPerHour"];
  expect(measurer(HAND_MADE_PLAN, keys)(handMadeDay())).toEqual([values.finish, null, values.headsPerHour]);
  expect(measurer(HAND_MADE_PLAN, Object.keys(values))(handMadeDay())).toEqual(Object.values(values));
});
