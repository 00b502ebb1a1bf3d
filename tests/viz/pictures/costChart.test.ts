import { expect, test } from "vitest";
import { type CostColumns, costChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

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

test("axes carry their units and the base is named", () => {
  const texts = textsOf(costChart(COLUMNS, testContext()));
  expect(texts).toContain("throughput, heads/h");
  expect(texts).toContain("cost, EUR/head");
  expect(texts).toContain("as it is (base)");
});

test("with more options than there is room for, the undominated ones and the base keep their names", () => {
  const many = Array.from({ length: 30 }, (_, i) => point(`option ${i}`, 500 + i, 2 + i / 100, i === 29, i === 28));
  const texts = textsOf(costChart({ ...COLUMNS, points: many }, testContext()));
  expect(texts).toContain("option 29");
  expect(texts).toContain("option 28 (base)");
  expect(texts.filter((text) => text.startsWith("option"))).toHaveLength(14);
});

test("without any point it says so", () => {
  expect(textsOf(costChart({ ...COLUMNS, points: [] }, testContext()))[1]).toMatch(/^No variant/);
});
