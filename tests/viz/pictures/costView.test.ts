import { expect, test } from "vitest";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import { costView } from "../../../viz/pictures/index.ts";
import { syntheticFactorial } from "../../support/syntheticStudy.ts";

/** A study whose variants have the given means of throughput and cost. */
function study(means: readonly (readonly [number, number])[]): StudyResults {
  const copy = structuredClone(syntheticFactorial());
  const info = { label: "x", unit: "", format: "number" as const, better: null };
  copy.responses = [
    { ...info, key: "headsPerHour", label: "Throughput", unit: "heads/h" },
    { ...info, key: "costPerHead", label: "Cost per head", unit: "EUR/head" },
  ];
  copy.variants = copy.variants.slice(0, means.length);
  const estimate = copy.variants[0]!.estimates[Object.keys(copy.variants[0]!.estimates)[0]!]!;
  copy.variants.forEach((variant, index) => {
    const [gain, cost] = means[index]!;
    const at = (mean: number) => ({ ...estimate, mean, low: mean - 1, high: mean + 1, halfWidth: 1 });
    variant.estimates = { headsPerHour: at(gain), costPerHead: at(cost) };
  });
  return copy;
}

test("a variant is undominated when no other gives as much for as little", () => {
  const view = costView(
    study([
      [530, 1.2],
      [560, 1.3],
      [550, 1.3],
      [530, 1.25],
    ]),
  )!;
  expect(view.points.map(({ undominated }) => undominated)).toEqual([true, true, false, false]);
  expect(view.description).toMatch(/^2 of 4 variants are undominated/);
});

test("two equal variants are both undominated, for neither is better", () => {
  const view = costView(
    study([
      [530, 1.2],
      [530, 1.2],
    ]),
  )!;
  expect(view.points.map(({ undominated }) => undominated)).toEqual([true, true]);
});

test("figures come with their intervals, and the base is known", () => {
  const [first, second] = costView(
    study([
      [530, 1.2],
      [560, 1.3],
    ]),
  )!.points;
  expect(first!.text).toMatch(/heads\/h \(.* at 95 %.*; .*EUR\/head \(/);
  expect([first!.base, second!.base]).toEqual([true, false]);
});

test("without both responses, or with one variant, there is no such picture", () => {
  const one = study([
    [530, 1.2],
    [560, 1.3],
  ]);
  expect(costView({ ...one, responses: one.responses.slice(0, 1) })).toBeNull();
  expect(costView({ ...one, variants: one.variants.slice(0, 1) })).toBeNull();
});
