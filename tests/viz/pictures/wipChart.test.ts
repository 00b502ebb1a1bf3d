import { expect, test } from "vitest";
import { type WipColumns, wipChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: WipColumns = {
  title: "Heads on the line",
  caption: "What to look for",
  subtitle: "Mean heads in each half hour",
  description: "Most in dressing.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  binSeconds: 1800,
  pauses: [],
  panels: [
    {
      name: "on the line",
      sections: [
        { name: "kill", values: [10, 40, 42, 5] },
        { name: "dressing", values: [0, 30, 36, 20] },
        { name: "inspection", values: [0, 2, 1, 2] },
      ],
    },
  ],
};

test("sections are stacked in line order, each with a texture of its own", async () => {
  await expect(picture(wipChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/wip.svg");
});

test("each section is named once, inside its area or in the gutter where the area is too thin", () => {
  const texts = textsOf(wipChart(COLUMNS, testContext()));
  for (const name of ["kill", "dressing", "inspection"]) expect(texts.filter((text) => text === name)).toHaveLength(1);
  expect(texts).toContain("on the line, heads");
});

test("a day without heads is said in words", () => {
  expect(textsOf(wipChart({ ...COLUMNS, panels: [] }, testContext()))[1]).toMatch(/^No section/);
});
