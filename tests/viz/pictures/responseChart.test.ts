import { expect, test } from "vitest";
import { type ResponseColumns, responseChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: ResponseColumns = {
  title: "Throughput",
  caption: "What to look for",
  subtitle: "Mean and 95 % interval",
  description: "One more is best.",
  quantity: { kind: "number", label: "Throughput", unit: "heads/h" },
  rows: [
    { name: "As it is", mean: 588, low: 584, high: 592, text: "588 heads/h\n584 to 592" },
    { name: "One more at evisceration", mean: 625, low: 622, high: 628, text: "625 heads/h\n622 to 628" },
    { name: "Never ran", mean: null, low: null, high: null, text: "no value" },
  ],
  base: 0,
};

test("one row per variant in the order given, dot and interval, the base's interval as a band", async () => {
  await expect(picture(responseChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/response.svg");
});

test("a variant without a value has words and no dot", () => {
  const svg = responseChart(COLUMNS, testContext());
  expect(svg.querySelectorAll("circle").length).toBe(2);
  expect(textsOf(svg)).toContain("no value");
});

test("one value alone, without interval, gets a dot and no band", () => {
  const rows = [{ name: "the plan", mean: 600, low: null, high: null, text: "600 heads/h" }];
  const svg = responseChart({ ...COLUMNS, rows }, testContext());
  expect(svg.querySelectorAll("circle").length).toBe(1);
  expect(textsOf(svg)).not.toContain("interval of the base");
});

test("no value at all is said in words", () => {
  expect(textsOf(responseChart({ ...COLUMNS, rows: [] }, testContext()))[1]).toMatch(/^No replication/);
});
