import { expect, test } from "vitest";
import { type SlopeColumns, slopeChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

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
