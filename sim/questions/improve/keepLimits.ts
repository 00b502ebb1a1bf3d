import { shareEstimate } from "../../maths/statistics/index.ts";
import type { CandidateDesign } from "./designs.ts";
import type { AskedLimit, ImproveQuestion } from "./question.ts";
import { beyondLimit } from "./score.ts";
import type { Trial, Trials } from "./trials.ts";

/** Whether a design is shown to keep all limits, shown to break one, or neither at the most days looked at. */
export type Kept = "kept" | "broken" | "not shown";

/** The days are looked at so many times, each time at twice as many. */
const LOOKS = 3;

/**
 * Looks whether each design keeps its limits: days are added until the one-sided bounds of its shares say so.
 * The chance of even one wrong verdict is `alpha` at most: it is split evenly over designs, limits and looks (Bonferroni).
 *
 * A limit that no head broke on any of the days counts as kept, outside that promise: a bound that holds for every way in
 * which heads can break it together is too high to be of use so soon. The words then say what was seen.
 */
export async function keepLimits(
  designs: readonly CandidateDesign[],
  { limits, firstStage, atMost }: ImproveQuestion,
  trials: Trials,
  alpha: number,
): Promise<Map<CandidateDesign, Kept>> {
  const found = new Map<CandidateDesign, Kept>(
    designs.map((design) => [design, limits.length === 0 ? "kept" : "not shown"]),
  );
  const each = alpha / Math.max(1, designs.length * limits.length * LOOKS);
  for (let look = 0; look < LOOKS && limits.length > 0; look++) {
    const open = designs.filter((design) => found.get(design) === "not shown");
    if (open.length === 0) break;
    const days = Math.min(atMost, firstStage * 2 ** look);
    for (const trial of await trials.of(open, days)) found.set(trial.design, verdictOf(trial, limits, each));
  }
  return found;
}

function verdictOf({ responses }: Trial, limits: readonly AskedLimit[], alpha: number): Kept {
  const verdicts = limits.map((limit): Kept => {
    const { share } = limit;
    // A day on which no head passed the limit's two points breaks nothing.
    const days = beyondLimit(limit, responses).map((value) => value ?? 0);
    const { max, low, high } = shareEstimate(days, 1 - 2 * alpha)!;
    if (max === 0 || (high !== null && high < share)) return "kept";
    return low !== null && low > share ? "broken" : "not shown";
  });
  if (verdicts.includes("broken")) return "broken";
  return verdicts.includes("not shown") ? "not shown" : "kept";
}
