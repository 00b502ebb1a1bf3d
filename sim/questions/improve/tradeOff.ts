import type { Design } from "./designs.ts";
import { levelsOf } from "./greedyPath.ts";
import { ranked } from "./merit.ts";
import type { ImproveQuestion } from "./question.ts";
import type { Trial, Trials } from "./trials.ts";

/**
 * What more of the total brings: the best design of the search for each of some totals and for no more than that, and the plan as it is, over days
 * that the search did not see. What takes least comes first.
 */
export async function tradeOff(tried: readonly Trial[], question: ImproveQuestion, trials: Trials): Promise<Trial[]> {
  const { space, search, firstStage } = question;
  if (search.curve === 0) return [];
  const best = ranked(tried, question).map(({ design }) => design);
  const found = levelsOf(space, search.curve).map((level) =>
    best.find(({ spent }) => spent !== null && spent <= level),
  );
  const base = best.find(({ key, spent }) => key === "base" && spent !== null);
  const points = new Set([base, ...found].filter((design) => design !== undefined));
  const sorted = [...points].sort((a: Design, b: Design) => a.spent! - b.spent!);
  return trials.of(sorted, firstStage);
}
