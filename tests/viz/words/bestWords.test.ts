import { expect, test } from "vitest";
import type { StudyResults } from "../../../sim/results/index.ts";
import { bestWords, studyFormat } from "../../../viz/words/index.ts";
import { syntheticFactorial } from "../../support/syntheticStudy.ts";

/** The factorial study with gaps to the best and who may be it, by variant; the others are clearly worse. */
function study(known: Record<number, { gap: number; mayBeBest: boolean }>): StudyResults {
  const copy = syntheticFactorial();
  copy.variants.forEach((variant, index) => {
    variant.againstBest = { throughput: { low: -9, high: 9, ...(known[index] ?? { gap: -20, mayBeBest: false }) } };
  });
  return copy;
}

const words = (results: StudyResults, change = {}) => {
  const info = { ...results.responses[0]!, ...change };
  return bestWords(results, info, studyFormat(results, info));
};

test("the best is told with its difference to the base", () => {
  expect(words(study({ 3: { gap: 2, mayBeBest: true } }))).toMatch(
    /^Best of all 12 is “32 places, 4.8 s”, 12.* heads\/h more than the base case \(.*\); all others are shown to be worse than it\.$/,
  );
});

test("who cannot be told from it is counted, and the one with the lowest levels named", () => {
  const some = { 1: { gap: -1, mayBeBest: true }, 2: { gap: -0.5, mayBeBest: true }, 3: { gap: 0.5, mayBeBest: true } };
  expect(words(study(some))).toMatch(
    /; 2 others cannot be told from it, of which “8 places, 4.8 s” has the lowest levels\.$/,
  );
  const one = { 2: { gap: -0.5, mayBeBest: true }, 3: { gap: 0.5, mayBeBest: true } };
  expect(words(study(one))).toMatch(/; only “16 places, 4.8 s” cannot be told from it\.$/);
});

test("where less is better the smallest gap wins; the base may be the best", () => {
  expect(words(study({ 0: { gap: -30, mayBeBest: true } }), { better: "less" })).toMatch(
    /^Best of all 12 is the base case, “4 places, 4.8 s”; /,
  );
});

test("without a wanted direction, or without such comparisons, there is no best", () => {
  expect(words(study({}), { better: null })).toBeNull();
  expect(words(syntheticFactorial())).toBeNull();
});
