import { beforeAll, expect, test } from "vitest";
import type { StudyResults, Why } from "../../../viz/contract.ts";
import { type SlopeColumns, slopeChart } from "../../../viz/index.ts";
import { slopeTable, slopeView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { slopeStudy, whyStudy } from "../../support/whyStudy.ts";

const COLUMNS: SlopeColumns = {
  title: "What a tenth of a second does",
  caption: "Uppermost: where it matters most",
  subtitle: "Near today's value",
  description: "Evisceration most.",
  nothing: "No slope is given: breaks begin at an hour.",
  footnotes: ["Not given for skinning: cycle time: it breaks down."],
  rows: [
    { name: "evisceration: cycle time", secondsPerTenth: 22, low: 19, high: 25, text: "+22 s (+19 to +25 s)" },
    { name: "skinning: repair time (jam)", secondsPerTenth: 3, low: -1, high: 7, text: "+3 s (-1 to +7 s)" },
  ],
};

test("slopes stand about 0, and what is missing below", async () => {
  const svg = slopeChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/slopes.svg");
  expect(svg.querySelectorAll("circle")).toHaveLength(2);
  expect(textsOf(svg)).toContain("Not given for skinning: cycle time: it breaks down.");
});

test("the axis has the unit of a slope", () => {
  expect(textsOf(slopeChart(COLUMNS, testContext()))).toContain("end of work, for 0.1 s more of the mean, s");
});

test("where no slope is given it says why", () => {
  expect(textsOf(slopeChart({ ...COLUMNS, rows: [] }, testContext()))[1]).toBe(COLUMNS.nothing);
});

let results: StudyResults;
let why: Why;
beforeAll(async () => {
  results = await slopeStudy();
  why = results.variants[0]!.why!;
});

const viewWith = (change: Partial<Why>) => slopeView(results, results.variants[0]!, { ...why, ...change });

test("what matters most comes first, in seconds for a tenth of a second, near today's value and no further", () => {
  const { rows, subtitle } = viewWith({});
  const slope = why.slopes.find(({ stage, parameter }) => stage === "skinning" && parameter === "cycle time")!;
  expect(rows[0]!.name).toBe("skinning: cycle time");
  expect(rows[0]!.secondsPerTenth).toBeCloseTo(slope.slope.mean / 10, 9);
  expect(rows[0]!.text).toMatch(/^\+[\d.]+ s \(\+[\d.]+ to \+[\d.]+ s\)$/);
  expect(subtitle).toContain("simulate a larger change to see what it brings");
  expect(rows.map(({ text }) => text).join(" ")).not.toContain("10 %");
});

test("a slope that one run cannot tell has no figure; its reason stands below the picture and in its description", () => {
  const { rows, footnotes, description } = viewWith({});
  expect(rows.map(({ name }) => name)).not.toContain("stunning: cycle time");
  expect(footnotes).toEqual([
    "No figure for stunning: cycle time; stunning: uptime (jam), because stunning breaks down: more work, or less time between stops, adds whole stops, which one day cannot show.",
  ]);
  expect(description).toContain(footnotes[0]);
});

test("where one reason stands against all slopes, it is said once instead of the picture", async () => {
  const broken = await whyStudy();
  const view = slopeView(broken, broken.variants[0]!, broken.variants[0]!.why!);
  expect(view.rows).toEqual([]);
  expect(view.nothing).toBe(
    "What small changes of each time would do is not given, because breaks begin at an hour: a head that just misses one waits for all of it. To see what a change is worth, simulate it.",
  );
  expect(view.description).toBe(view.nothing);
});

test("without any time that has a mean it says so", () => {
  expect(viewWith({ slopes: [], withheldSlopes: [] }).description).toBe(
    "No time of this plan moves the end of work in a way that can be told.",
  );
});

test("the table keeps figures and unit", () => {
  const row = { name: "a", secondsPerTenth: 3, low: 1, high: 5, text: "" };
  const words = { title: "", caption: "", subtitle: "", description: "" };
  expect(slopeTable({ ...words, nothing: "", footnotes: [], rows: [row] })).toMatchObject({
    columns: [{ name: "time" }, { name: "end of work", unit: "s for 0.1 s more" }, {}, {}],
    rows: [["a", 3, 1, 5]],
  });
});
