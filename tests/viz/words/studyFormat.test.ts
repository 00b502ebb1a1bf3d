import { expect, test } from "vitest";
import { studyFormat } from "../../../viz/words/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("all variants of a study write one response in one unit", () => {
  const study = syntheticStudy();
  const format = studyFormat(study, study.responses[1]!);
  expect(format.difference(-39, 46)).toBe("\u22120.7 min");
  expect(format.value(0, 200)).toBe("06:00");
});
