import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("gives every way out of the line its own count, 0 when nothing went there", () => {
  expect(values).toMatchObject({ "removed.condemned": 30, "removed.dead on arrival": 10, leftInLairage: 0 });
  const nothingRemoved = { ...handMadeDay(), heads: { ...handMadeDay().heads, out: { carcass: 1 } } };
  expect(measure(nothingRemoved, HAND_MADE_PLAN)["removed.condemned"]).toBe(0);
});
