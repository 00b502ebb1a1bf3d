import { expect, it } from "vitest";
import { pairMeans } from "../../../../sim/maths/statistics/index.ts";

it("pairMeans averages days two by two, null where one is missing, and refuses an odd day", () => {
  expect(pairMeans(Object.freeze([610, 590, 604, 600, null, 3]) as readonly (number | null)[])).toEqual([
    600,
    602,
    null,
  ]);
  expect(pairMeans([])).toEqual([]);
  expect(() => pairMeans([1, 2, 3])).toThrow(/come in pairs/);
});
