import { expect, it } from "vitest";
import { measure, responsesOf } from "../../../sim/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("has exactly the keys of responsesOf, in the same order", () => {
  expect(Object.keys(values)).toEqual(responsesOf(HAND_MADE_PLAN).map(({ key }) => key));
});
