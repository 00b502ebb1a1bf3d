import { runSingleDay, runStudy } from "../../sim/run/index.ts";
import type { StudyResults } from "../../viz/contract.ts";
import { readSmallPlan } from "./readSmallPlan.ts";
import { threeVariants } from "./threeVariants.ts";

const MADE = { gambrel: "test", command: "test" };

/** Three variants of the small plan, whose days tell what their end was owed to. */
export function whyStudy(): Promise<StudyResults> {
  return runStudy(threeVariants({ why: true }), MADE);
}

/** One traced day of the small plan, which tells the same without intervals. */
export function whyDay(): StudyResults {
  return runSingleDay(readSmallPlan(), "seed", "binned", MADE);
}
