import { expect, test } from "vitest";
import { type SlopeColumns, slopeChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: SlopeColumns = {
  title: "What a second at each stage is worth",
  caption: "Longest bar: where a faster cycle helps most",
  subtitle: "Minutes of the day per second of mean cycle time",
  description: "Evisceration most.",
  footnotes: ["Note 1: cycle too random."],
  rows: [
    {
      name: "evisceration",
      minutesPerSecond: 22,
      low: 19,
      high: 25,
      valid: true,
      note: "",
      text: "+22 min/s (19 to 25)",
    },
    {
      name: "skinning",
      minutesPerSecond: 3,
      low: -1,
      high: 7,
      valid: false,
      note: "cycle too random",
      text: "+3 min/s (-1 to 7)\nsee note 1",
    },
  ],
};

test("slopes stand about 0, those not to be relied on with an open dot, and the caution below", async () => {
  const svg = slopeChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/slopes.svg");
  const dots = [...svg.querySelectorAll("circle")].map(
    (dot) => dot.getAttribute("fill") === dot.getAttribute("stroke"),
  );
  expect(dots).toEqual([true, false]);
  expect(textsOf(svg)).toContain("Note 1: cycle too random.");
});

test("the axis has the unit of a slope", () => {
  expect(textsOf(slopeChart(COLUMNS, testContext()))).toContain("end of work, for each second more of the mean, min/s");
});

test("without stages it says so", () => {
  expect(textsOf(slopeChart({ ...COLUMNS, rows: [] }, testContext()))[1]).toBe("No time of this plan has a slope.");
});
