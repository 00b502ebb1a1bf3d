import { describe, expect, it, test } from "vitest";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import { type CostColumns, costChart } from "../../../viz/index.ts";
import { costTable, costView, tradeOffView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { inventedImprovement } from "../../support/invented.ts";
import { syntheticFactorial } from "../../support/syntheticStudy.ts";

const point = (name: string, gain: number, cost: number, undominated: boolean, base = false) => ({
  name,
  gain: { mean: gain, low: gain - 4, high: gain + 4 },
  cost: { mean: cost, low: cost - 0.02, high: cost + 0.02 },
  undominated,
  base,
  text: `${gain} heads/h at ${cost} EUR/head`,
});
const COLUMNS: CostColumns = {
  title: "Cost per head against throughput",
  caption: "Filled dots: no option gives more for less",
  subtitle: "Means with intervals",
  description: "Two of three are undominated.",
  gain: { kind: "number", label: "throughput", unit: "heads/h" },
  cost: { kind: "number", label: "cost", unit: "EUR/head" },
  points: [
    point("as it is", 530, 1.2, true, true),
    point("one more machine", 560, 1.3, true),
    point("more hooks", 528, 1.25, false),
  ],
};

test("undominated options are filled and joined, dominated ones open", async () => {
  const svg = costChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/cost.svg");
  const dots = [...svg.querySelectorAll("[data-value]")].map((group) =>
    group.querySelector("circle")!.getAttribute("fill"),
  );
  expect(dots[0]).toBe(dots[1]);
  expect(dots[2]).not.toBe(dots[0]);
});

test("axes carry their units and today's plan is named", () => {
  const texts = textsOf(costChart(COLUMNS, testContext()));
  expect(texts).toContain("throughput, heads/h");
  expect(texts).toContain("cost, EUR/head");
  expect(texts).toContain("as it is (today)");
});

test("with more options than there is room for, the undominated ones and the base keep their names", () => {
  const many = Array.from({ length: 30 }, (_, i) => point(`option ${i}`, 500 + i, 2 + i / 100, i === 29, i === 28));
  const texts = textsOf(costChart({ ...COLUMNS, points: many }, testContext()));
  expect(texts).toContain("option 29");
  expect(texts).toContain("option 28 (today)");
  expect(texts.filter((text) => text.startsWith("option"))).toHaveLength(14);
});

test("without any point it says so", () => {
  expect(textsOf(costChart({ ...COLUMNS, points: [] }, testContext()))[1]).toMatch(/^No variant/);
});

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
  expect(view.description).toMatch(/^No other variant gives as much for so little as these 2 of 4: /);
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

describe("tradeOffView", () => {
  it("sets what a total gives, with its interval, against the total; names what takes more for less or breaks a limit", () => {
    const view = tradeOffView(inventedImprovement())!;
    expect(view.points.map(({ name, cost, undominated }) => [name, cost.mean, undominated])).toEqual([
      ["2 people (beyond a limit)", 2, true],
      ["4 people", 4, true],
      ["as it is", 5, false],
    ]);
    expect(view.points[1]!.gain).toEqual({ mean: 330, low: 328, high: 332 });
    expect([view.cost, view.gain]).toEqual([
      { kind: "number", label: "People", unit: "" },
      { kind: "number", label: "Throughput", unit: "carcasses/h" },
    ]);
    expect(view.caption).toMatch(/^Bottom right is best/);
  });

  it("is null without a curve, and leaves out what cannot be counted", () => {
    expect(tradeOffView(inventedImprovement({ curve: [] }))).toBeNull();
    const { curve } = inventedImprovement();
    const [first, ...rest] = curve;
    expect(tradeOffView(inventedImprovement({ curve: [{ ...first!, uses: null }, ...rest] }))!.points).toHaveLength(2);
  });
});

test("cost and gain stand side by side with their units", () => {
  const words = { title: "", caption: "", subtitle: "", description: "" };
  const ends = { mean: 1, low: 0, high: null };
  const { columns, rows } = costTable({
    ...words,
    gain: { kind: "number", label: "throughput", unit: "heads/h" },
    cost: { kind: "number", label: "cost", unit: "EUR/head" },
    points: [{ name: "a", gain: ends, cost: { ...ends, mean: 2 }, undominated: true, base: true, text: "" }],
  });
  expect(columns.map(({ name, unit }) => `${name} ${unit}`)[4]).toBe("cost: mean EUR/head");
  expect(rows).toEqual([["a", 1, 0, null, 2, 0, null, "yes"]]);
});
