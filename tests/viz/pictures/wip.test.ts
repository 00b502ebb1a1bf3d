import { expect, test } from "vitest";
import { type WipColumns, wipChart } from "../../../viz/index.ts";
import { wipView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

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

test("a section that dwarfs the others is drawn on a scale of its own", () => {
  const study = syntheticStudy();
  const { panels } = wipView(study, study.variants[0]!);
  expect(panels.map((panel) => panel.sections.map((section) => section.name))).toEqual([
    ["kill", "dressing", "inspection"],
    ["chilling"],
  ]);
});

test("sections of like size share one panel", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.traces!.wip.pop();
  expect(wipView(study, study.variants[0]!).panels).toHaveLength(1);
});

test("the finding names the most heads in each section", () => {
  const study = syntheticStudy();
  const most = study.variants[0]!.day.sections[0]!.wip.max;
  expect(wipView(study, study.variants[0]!).description).toContain(`kill ${most}`);
});
