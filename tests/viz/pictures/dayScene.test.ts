import { expect, test } from "vitest";
import { queueView } from "../../../viz/pictures/index.ts";
import { syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

test("every picture of a day carries its start, its end and its breaks, and says which day it is", () => {
  const study = syntheticStudy();
  const view = queueView(study, study.variants[0]!);
  expect(view.startClockSeconds).toBe(6 * 3600);
  expect(view.endSeconds).toBe(study.variants[0]!.day.finishSeconds);
  expect(view.pauses.map((pause) => pause.name)).toEqual(["breakfast", "midday"]);
  expect(view.subtitle).toContain("one day of “As it is” out of 20 (day 1)");
});

test("a single day is not called one out of many", () => {
  const day = syntheticSingleDay();
  expect(queueView(day, day.variants[0]!).subtitle).toContain("one day (day 1)");
});
