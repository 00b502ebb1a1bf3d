import { expect, test } from "vitest";
import { wipView } from "../../../viz/pictures/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

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
