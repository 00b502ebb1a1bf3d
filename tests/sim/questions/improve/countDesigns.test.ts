import { describe, expect, it } from "vitest";
import { countDesigns } from "../../../../sim/questions/improve/countDesigns.ts";
import { IMPROVE_CASES } from "../../../support/improveCases.ts";
import { caseQuestion } from "../../../support/improving.ts";

const places = (changes: Record<string, unknown>) =>
  caseQuestion({
    allocate: {
      places: { among: ["stunning", "sticking", "skinning"].map((station) => ({ station, to: 100 })), ...changes },
    },
  }).space;

describe("countDesigns", () => {
  it("counts the ways to share n things among k: (n + k - 1) over (k - 1)", () => {
    expect(countDesigns(places({ total: 15, least: 15 }))).toBe((17 * 16) / 2);
    expect(countDesigns(places({ total: 100, least: 100 }))).toBe((102 * 101) / 2);
  });

  it("with no more than a total, as if one more shared it: (n + k) over k", () => {
    expect(countDesigns(places({ total: 10 }))).toBe((13 * 12 * 11) / 6);
  });

  it("counts sets of options by their prices, those that exclude each other left out", () => {
    const offers = (prices: number[], path: (index: number) => string) =>
      caseQuestion({
        allocate: {
          budget: {
            total: "10 EUR",
            options: prices.map((price, index) => ({
              ...{ name: String(index), price: `${price} EUR`, life: 5 },
              set: { [path(index)]: 6 + index },
            })),
          },
        },
      }).space;
    const stations = ["stunning", "sticking", "skinning"];
    // Of the eight sets only 5 + 4 + 3 is too dear.
    expect(countDesigns(offers([5, 4, 3], (index) => `line.${stations[index]}.buffer`))).toBe(7);
    // Nothing, or one of the three.
    expect(countDesigns(offers([5, 4, 3], () => "line.skinning.buffer"))).toBe(4);
  });

  it("is what the ten cases are compared with", () => {
    const counts = IMPROVE_CASES.map((_, index) => countDesigns(caseQuestion({}, index).space));
    expect(Math.min(...counts)).toBeGreaterThan(100);
  });
});
