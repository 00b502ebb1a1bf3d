import { beforeAll, expect, test } from "vitest";
import type { StudyResults, Why } from "../../../viz/contract.ts";
import { slopeView } from "../../../viz/views/index.ts";
import { whyStudy } from "../../support/whyStudy.ts";

let results: StudyResults;
let why: Why;
beforeAll(async () => {
  results = await whyStudy();
  why = results.variants[1]!.why!;
});

const viewWith = (change: Partial<Why>) => slopeView(results, results.variants[1]!, { ...why, ...change });

test("what matters most comes first, in minutes for each second, with what a tenth less would bring", () => {
  const [first] = viewWith({}).rows;
  expect(first!.name).toBe("skinning: cycle time");
  expect(first!.minutesPerSecond).toBeCloseTo(155.822 / 60, 4);
  expect(first!.text).toMatch(/^\+2\.\d+ \(\+[\d.]+ to \+[\d.]+\)\n10 % less: [\d.]+ min$/);
  expect(first!.valid).toBe(true);
});

test("a slope that one run cannot tell has its caution below the picture, once, and refers to it", () => {
  const slopes = why.slopes.map((slope) => ({ ...slope, caution: "who goes where may change" }));
  const { rows, footnotes } = viewWith({ slopes });
  expect(rows.every(({ valid, text }) => !valid && text.endsWith("note 1"))).toBe(true);
  expect(footnotes).toEqual(["Note 1: who goes where may change: a hint only."]);
});

test("uptimes are left out, and no time is offered to be saved from a dwell", () => {
  const { rows } = viewWith({});
  expect(why.slopes.some(({ parameter }) => parameter === "uptime")).toBe(true);
  expect(rows.some(({ name }) => name.includes("uptime"))).toBe(false);
  expect(rows.find(({ name }) => name === "bleeding: dwell")!.text).not.toContain("10 %");
});

test("without slopes it says so", () => {
  expect(viewWith({ slopes: [] }).description).toBe("No time of this plan has a slope.");
});
