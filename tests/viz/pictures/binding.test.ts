import { beforeAll, expect, test } from "vitest";
import type { StudyResults } from "../../../viz/contract.ts";
import { type BindingColumns, bindingChart } from "../../../viz/index.ts";
import { bindingTable, bindingView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { whyDay, whyStudy } from "../../support/whyStudy.ts";

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

let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
});

const viewOf = (found: StudyResults, index: number) =>
  bindingView(found, found.variants[index]!, found.variants[index]!.why!);

test("the longest comes first, each part with its interval, and they add up to the end of work", () => {
  const { rows } = viewOf(results, 1);
  const { why } = results.variants[1]!;
  expect(rows[0]).toMatchObject({ stage: "skinning", cause: "its work" });
  expect(rows[0]!.low).toBeLessThan(rows[0]!.seconds);
  const sum = rows.reduce((total, { seconds }) => total + seconds, 0);
  expect(sum / why!.total.mean).toBeGreaterThan(0.98);
  expect(sum / why!.total.mean).toBeLessThan(1 + 1e-9);
});

test("what is too little for a row of its own is told together", () => {
  const { why } = results.variants[0]!;
  const many = Array.from({ length: 5 }, () => why!.parts)
    .flat()
    .slice(0, 20);
  const total = { ...why!.total, mean: many.reduce((sum, { seconds }) => sum + seconds.mean, 0) };
  const view = bindingView(results, results.variants[0]!, { ...why!, parts: many, total });
  expect(view.rows).toHaveLength(12);
  expect(view.footnote).toMatch(/^All else together: .* % of the time\.$/);
});

test("a variant's picture says over how many days, a single day's that there is no interval", () => {
  expect(viewOf(results, 1).subtitle).toMatch(/^“slower”, mean over 4 simulated days with its 95 % interval\./);
  const day = viewOf(whyDay(), 0);
  expect(day.subtitle).toMatch(/^One day, no interval\./);
  expect(day.rows[0]).toMatchObject({ low: null, high: null });
});

test("the table keeps the figures of each part", () => {
  const row = { stage: "a", cause: "work", kind: 0, seconds: 9, low: 8, high: null, text: "" };
  expect(bindingTable({ ...COLUMNS, rows: [row] }).rows).toEqual([["a", "work", 9, 8, null]]);
});
