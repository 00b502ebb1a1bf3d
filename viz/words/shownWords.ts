import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { StudyResults } from "../contract.ts";

/** What the word "shown" means in a study, and what its intervals of differences hold for; "" without comparisons. */
export function shownWords({ study, procedure, variants }: StudyResults): string {
  const comparisons = variants.length - 1;
  if (comparisons < 1 || study.replications < 2) return "";
  if (comparisons === 1) return "A difference is \u201Cshown\u201D when its interval leaves 0 out.";
  const error = formatConfidence(1 - study.confidence);
  if (procedure.errorRate === "family-wise")
    return (
      "A difference is \u201Cshown\u201D when its interval leaves 0 out. The intervals of a result allow for all variants at once " +
      `(Bonferroni, Dunn 1961), so the chance of even one false difference is ${error} at most.`
    );
  if (procedure.errorRate === "false discovery")
    return (
      "A difference is \u201Cshown\u201D when its interval leaves 0 out. Of the differences shown for a result, at most " +
      `${error} are false on average (Benjamini and Hochberg 1995), and at most ${error} of their intervals miss the true ` +
      "difference (Benjamini and Yekutieli 2005)."
    );
  const expected = formatDecimals((1 - study.confidence) * comparisons, 2);
  return (
    "A difference is \u201Cshown\u201D when its interval leaves 0 out. Each interval stands by itself: even if no variant truly differed, " +
    `chance alone would show about ${expected} differences for each result in ${comparisons} comparisons.`
  );
}
