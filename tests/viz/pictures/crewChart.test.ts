import { expect, test } from "vitest";
import { type CrewColumns, crewChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: CrewColumns = {
  title: "People at work",
  caption: "White under the line is people who wait",
  subtitle: "Mean people in each half hour",
  description: "Evisceration busiest.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
  binSeconds: 1800,
  panels: [
    { name: "evisceration", note: "people: at work 81 %", largest: 4, busy: [3.5, 3.8, 1, 3.1], present: [4, 4, 2, 4] },
    { name: "maintenance", note: "people: at work 4 %", largest: 1, busy: [0, 0.2, 0, 0], present: [1, 1, 1, 1] },
  ],
  footnote: "",
};

test("people with work in hand lie under the line of people on duty", async () => {
  await expect(picture(crewChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/crews.svg");
});

test("a plan without crews says so", () => {
  expect(textsOf(crewChart({ ...COLUMNS, panels: [] }, testContext()))[1]).toBe("The plan has no crew.");
});
