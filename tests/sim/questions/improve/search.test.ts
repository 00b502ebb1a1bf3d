import { expect, it } from "vitest";
import { neighbours } from "../../../../sim/questions/improve/search.ts";
import { isAllowed, spent } from "../../../../sim/questions/improve/space.ts";
import { caseQuestion } from "../../../support/improving.ts";

it("moves one or two units from one element to another and keeps the total", () => {
  const { space } = caseQuestion();
  const around = neighbours(space, [5, 5, 5]);
  expect(around).toHaveLength(12);
  expect(around).toContainEqual([7, 3, 5]);
  expect(around.every((counts) => spent(space, counts) === 15)).toBe(true);
});

it("stays within bounds and totals", () => {
  const { space } = caseQuestion({}, 6);
  const around = neighbours(space, [1, 4, 3, 3]);
  expect(around).not.toContainEqual([1, 5, 3, 2]);
  expect(around).not.toContainEqual([0, 4, 4, 3]);
  expect(around).toContainEqual([1, 3, 3, 3]);
  expect(around).not.toContainEqual([2, 4, 3, 3]);
  expect(around.every((counts) => isAllowed(space, counts))).toBe(true);
});

it("of a budget buys, sells, or takes one option in place of another", () => {
  const { space } = caseQuestion({}, 8);
  const nothing = space.elements.map(() => 0);
  expect(neighbours(space, nothing)).toHaveLength(8);
  expect(neighbours(space, nothing.with(0, 1))).toContainEqual(nothing.with(1, 1));
});
