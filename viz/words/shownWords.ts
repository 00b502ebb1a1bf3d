import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { StudyResults } from "../contract.ts";

/** What the word "shown" means in a study, and what its intervals of differences hold for; "" without comparisons. */
export function shownWords({ study, procedure, variants }: StudyResults): string {
  const comparisons = variants.length - 1;
  if (comparisons < 1 || study.replications < 2) return "";
  if (comparisons === 1) return "\u201CShown\u201D means that the interval leaves 0 out.";
  const error = formatConfidence(1 - study.confidence);
  if (procedure.errorRate === "family-wise")
    return (
      "\u201CShown\u201D means that the interval leaves 0 out. The intervals of a response allow for all variants at once " +
      `(Bonferroni, Dunn 1961), so the chance of even one false difference in it is ${error} at most.`
    );
  if (procedure.errorRate === "false discovery")
    return (
      "\u201CShown\u201D means that the interval leaves 0 out. Of the differences shown in a response, at most " +
      `${error} are false on average (Benjamini and Hochberg 1995), and at most ${error} of their intervals miss the true ` +
      "difference (Benjamini and Yekutieli 2005)."
    );
  const expected = formatDecimals((1 - study.confidence) * comparisons, 2);
  return (
    "\u201CShown\u201D means that the interval leaves 0 out. Each interval stands by itself: if no variant differed in truth, " +
    `${comparisons} comparisons would still show ${expected} differences per response on average, by chance.`
  );
}
