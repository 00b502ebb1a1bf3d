import { expect, test } from "vitest";
import { massView } from "../../../viz/pictures/index.ts";
import { exampleDay } from "../../support/exampleDay.ts";

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
