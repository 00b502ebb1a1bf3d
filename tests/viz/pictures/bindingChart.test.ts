import { expect, test } from "vitest";
import { type BindingColumns, bindingChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: BindingColumns = {
  title: "What the day is made of",
  caption: "The longest bar is where time is to be won",
  subtitle: "Binding path",
  description: "Evisceration work most.",
  kinds: ["work", "people", "repair", "planned stop"],
  rows: [
    {
      stage: "evisceration",
      cause: "work",
      kind: 0,
      seconds: 18_000,
      low: 17_000,
      high: 19_000,
      text: "5.00 h\n62 % of the day",
    },
    {
      stage: "skinning",
      cause: "repair",
      kind: 2,
      seconds: 3600,
      low: 1800,
      high: 5400,
      text: "1.00 h\n12 % of the day",
    },
    {
      stage: "break",
      cause: "calendar",
      kind: 3,
      seconds: 2700,
      low: null,
      high: null,
      text: "45 min\n9 % of the day",
    },
  ],
  footnote: "11 parts under 1 % are left out.",
};

test("each part has a bar with its interval, its cause by name and by texture", async () => {
  const svg = bindingChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/binding.svg");
  const fills = [...svg.querySelectorAll("[data-value] rect")].map((bar) => bar.getAttribute("fill"));
  expect(new Set(fills).size).toBe(3);
});

test("the key names the kinds that there are, and no others", () => {
  const texts = textsOf(bindingChart(COLUMNS, testContext()));
  expect(texts).toContain("planned stop");
  expect(texts).not.toContain("people");
});

test("bars are as long as their time", () => {
  const svg = bindingChart(COLUMNS, testContext());
  const widths = [...svg.querySelectorAll("[data-value] rect")].map((bar) => Number(bar.getAttribute("width")));
  expect(widths[0]! / widths[1]!).toBeCloseTo(5, 1);
});

test("without parts it says so", () => {
  expect(textsOf(bindingChart({ ...COLUMNS, rows: [] }, testContext()))[1]).toBe("Nothing held the day up.");
});
