import { expect, test } from "vitest";
import { overtimeWords } from "../../../viz/words/index.ts";
import { syntheticSingleDay } from "../../support/syntheticStudy.ts";

const HALF_HOUR = 1800;

/** The words for a day from 06:00 whose last shift ends at 14:00, as work ends so many minutes before or after. */
function words(minutesAfter: number, cleaningSeconds: number): string {
  const results = syntheticSingleDay();
  const { day } = results.variants[0]!;
  day.shiftEndSeconds = 28_800;
  day.workFinishSeconds = 28_800 + minutesAfter * 60;
  results.plan.cleaningSeconds = cleaningSeconds;
  return overtimeWords(results, day);
}

test("cleaning counts: 18 min of overtime on a day whose work ended 12 min before the shift did", () => {
  expect(words(-12, 0)).toBe("Work on the line ended at 13:48, within the shifts.");
  expect(words(-12, HALF_HOUR)).toBe(
    "Work on the line ended at 13:48 and cleaning at 14:18, 18 min after the end of the last shift.",
  );
  expect(words(-30, HALF_HOUR)).toBe("Work on the line ended at 13:30 and cleaning at 14:00, within the shifts.");
  expect(words(5, HALF_HOUR)).toContain("cleaning at 14:35, 35 min after the end of the last shift");
  expect(words(0.5, 0)).toContain("less than 1 min after the end of the last shift");
});

test("a day without work has nothing to clean", () => {
  const results = syntheticSingleDay();
  const { day } = results.variants[0]!;
  day.workFinishSeconds = 0;
  results.plan.cleaningSeconds = HALF_HOUR;
  expect(overtimeWords(results, day)).not.toContain("cleaning");
});
