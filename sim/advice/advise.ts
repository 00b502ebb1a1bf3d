import type { Advice, StudyResults, TriedChange } from "../results/index.ts";
import { adviceWords } from "./adviceWords.ts";
import type { PlanChange } from "./change.ts";

/**
 * What to change first, from the results of an advice study: each change with the paired difference it made, most worth
 * first. The intervals hold for all changes at once (Holm family of the study).
 */
export function advise(results: StudyResults, changes: readonly PlanChange[]): Advice | null {
  const [base, ...variants] = results.variants;
  const response = results.responses[0];
  if (base?.why == null || response === undefined) return null;
  const tried = variants.flatMap(({ name, differences }, row): TriedChange[] => {
    const difference = differences?.[response.key];
    const { kind, of, label } = changes[row]!;
    return difference === undefined ? [] : [{ kind, of, label, variant: name, difference }];
  });
  const gain = ({ difference }: TriedChange) => (response.better === "less" ? -difference.mean : difference.mean);
  const advice = { response, days: base.days, changes: tried.sort((a, b) => gain(b) - gain(a)) };
  return { ...advice, words: adviceWords(base.why, advice) };
}
