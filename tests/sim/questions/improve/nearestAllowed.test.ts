import { expect, it } from "vitest";
import { nearestAllowed } from "../../../../sim/questions/improve/nearestAllowed.ts";
import { caseQuestion } from "../../../support/improving.ts";

const worth = (more: number[]) => () => ({ more, fewer: more });

it("adds what is worth most until the total is used", () => {
  const { space } = caseQuestion();
  expect(nearestAllowed(space, worth([1, 3, 2]), 15)).toEqual([1, 13, 1]);
});

it("takes away what is worth least where there is too much", () => {
  const { space } = caseQuestion({}, 6);
  expect(space.base).toEqual([3, 3, 3, 3]);
  expect(nearestAllowed(space, worth([4, 1, 2, 3]), 0)).toEqual([3, 2, 3, 3]);
});

it("is null where the total cannot be reached", () => {
  const { space } = caseQuestion();
  expect(nearestAllowed(space, worth([1, 1, 1]), 5)).toBeNull();
});
