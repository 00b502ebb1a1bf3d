import { expect, test } from "vitest";
import { type MassColumns, massChart } from "../../../viz/index.ts";
import { massTable, massView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const COLUMNS: MassColumns = {
  title: "Where the live weight goes",
  caption: "The widest band is the carcass",
  subtitle: "One day",
  description: "56 % carcass.",
  liveKilograms: 10_000,
  liveText: "10 000 kg",
  flows: [
    { name: "carcass", kilograms: 5600, text: "5 600 kg, 56 %", kind: "carcass" },
    { name: "viscera", kilograms: 2500, text: "2 500 kg, 25 %", kind: "by-product" },
    { name: "skins", kilograms: 1500, text: "1 500 kg, 15 %", kind: "by-product" },
    { name: "blood", kilograms: 380, text: "380 kg, 3.8 %", kind: "by-product" },
    { name: "condemned", kilograms: 20, text: "20 kg, 0.2 %", kind: "lost" },
    { name: "nothing", kilograms: 0, text: "0 kg", kind: "lost" },
  ],
};

test("bands are as wide as their mass, and what has none is left out", async () => {
  const svg = massChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/mass.svg");
  const widths = [...svg.querySelectorAll("[data-value] path")].map((band) =>
    Number(band.getAttribute("stroke-width")),
  );
  expect(widths).toHaveLength(5);
  expect(widths[0]! / widths[2]!).toBeCloseTo(5600 / 1500, 1);
  expect(textsOf(svg)).not.toContain("nothing");
});

test("a day without live weight says so", () => {
  expect(textsOf(massChart({ ...COLUMNS, liveKilograms: 0 }, testContext()))[1]).toMatch(/^No live weight/);
});

const results = exampleDay("parts/vessels");
const base = results.variants[0]!;

test("what leaves adds up to the live weight, to rounding", () => {
  const view = massView(results, base)!;
  const sum = view.flows.reduce((total, { kilograms }) => total + kilograms, 0);
  expect(sum / view.liveKilograms).toBeCloseTo(1, 9);
});

test("carcasses come first, then by-products, the heavier ones first", () => {
  const { flows } = massView(results, base)!;
  expect(flows[0]).toMatchObject({ name: "carcass", kind: "carcass" });
  const products = flows.filter(({ kind }) => kind === "by-product").map(({ kilograms }) => kilograms);
  expect(products.length).toBeGreaterThan(0);
  expect(products).toEqual([...products].sort((a, b) => b - a));
});

test("a trace of something is not called 0 %", () => {
  const masses = { ...base.day.masses, liveKg: 1e6, byProductsKg: { crumbs: 1 }, outKg: { carcass: 999_999 } };
  const view = massView(results, { ...base, day: { ...base.day, masses } })!;
  expect(view.flows.find(({ name }) => name === "crumbs")!.text).toMatch(/under 0\.1 %$/);
});

test("a day without live weight has no such picture", () => {
  const masses = { ...base.day.masses, liveKg: 0 };
  expect(massView(results, { ...base, day: { ...base.day, masses } })).toBeNull();
});

test("nor has one whose weight all goes one way: there would be nothing to see", () => {
  const masses = { ...base.day.masses, liveKg: 1500, onLineKg: 0, byProductsKg: {}, outKg: { carcass: 1500 } };
  expect(massView(results, { ...base, day: { ...base.day, masses } })).toBeNull();
});

const ferncote = exampleDay("ferncote");

test("what became of the live weight adds up to it", () => {
  const { rows } = massTable(massView(ferncote, ferncote.variants[0]!)!);
  const [live, ...flows] = rows.map((row) => Number(row[2]));
  expect(flows.reduce((sum, kilograms) => sum + kilograms, 0) / live!).toBeCloseTo(1, 9);
});
