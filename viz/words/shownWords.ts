import type { StudyResults } from "../contract.ts";
import { formatNumber } from "../frame/index.ts";
import { confidenceWords } from "./confidenceWords.ts";

/** What the word "shown" means in a study, and what its intervals of differences hold for; "" without comparisons. */
export function shownWords({ study, procedure, variants }: StudyResults): string {
  const comparisons = variants.length - 1;
  if (comparisons < 1 || study.replications < 2) return "";
  if (comparisons === 1) return "\u201CShown\u201D means that the interval leaves 0 out.";
  const error = confidenceWords(1 - study.confidence);
  if (procedure.errorRate === "family-wise")
    return (
      "\u201CShown\u201D goes by Holm's test (1979), which keeps the chance of even one false difference in a response at " +
      `${error}; the intervals of its differences hold for all variants at once.`
    );
  if (procedure.errorRate === "false discovery")
    return (
      "\u201CShown\u201D goes by the test of Benjamini and Hochberg (1995): of the differences shown in a response, at most " +
      `${error} are false on average. Each interval stands by itself.`
    );
  const expected = formatNumber((1 - study.confidence) * comparisons, 2);
  return (
    "\u201CShown\u201D means that the interval leaves 0 out. Each interval stands by itself: if no variant differed in truth, " +
    `${comparisons} comparisons would still show ${expected} differences per response on average, by chance.`
  );
}
