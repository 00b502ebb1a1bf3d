import { runSingleDay, runStudy } from "../../sim/days/run/index.ts";
import type { StudyResults } from "../../viz/contract.ts";
import { breakdown } from "./breakdowns.ts";
import { dwell, exponential, planOf, station, stream } from "./plans.ts";
import { readSmallPlan } from "./readSmallPlan.ts";
import { threeVariants } from "./threeVariants.ts";

const MADE = { gambrel: "test", command: "test" };

/** Three variants of the small plan, whose days tell what their end was owed to. It has a break: its slopes are withheld. */
export function whyStudy(): Promise<StudyResults> {
  return runStudy(threeVariants({ why: true }), MADE);
}

/** One traced day of the small plan, which tells the same without intervals. */
export function whyDay(): StudyResults {
  return runSingleDay(readSmallPlan(), "seed", "binned", MADE);
}

/** A row without people, breaks or detours, held up by its last machine; the first one jams. Most of its slopes are given. */
export function slopeStudy(): Promise<StudyResults> {
  const jam = breakdown(0, 0, { uptimeSeconds: exponential(300), repairSeconds: exponential(60) });
  const plan = planOf(stream(exponential(5), 200), [
    station("stunning", exponential(4), { buffer: 5, breakdowns: [jam] }),
    dwell("bleeding", 90, 40),
    station("skinning", exponential(8), { buffer: 10 }),
  ]);
  const only = { name: "base", levels: [], set: {}, insert: [], remove: [], plan };
  return runStudy(threeVariants({ why: true, variants: [only] }), MADE);
}
