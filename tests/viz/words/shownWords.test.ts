import { expect, test } from "vitest";
import { shownWords } from "../../../viz/words/index.ts";
import { syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

function words(errorRate: "family-wise" | "false discovery" | "per comparison"): string {
  const results = syntheticStudy();
  return shownWords({ ...results, procedure: { ...results.procedure, errorRate } });
}

test("says by which test a difference is shown, and whether intervals hold at once", () => {
  expect(words("family-wise")).toMatch(/Holm's test \(1979\).* at 5 %; .* hold for all variants at once\.$/);
  expect(words("false discovery")).toMatch(/Benjamini and Hochberg \(1995\).* 5 % .*Each interval stands by itself\.$/);
  expect(words("per comparison")).toMatch(/Each interval stands by itself: .* 3 comparisons would still show 0\.15/);
});

test("says nothing where nothing is compared, and the plain thing for one comparison", () => {
  expect(shownWords(syntheticSingleDay())).toBe("");
  const results = syntheticStudy();
  const two = { ...results, variants: results.variants.slice(0, 2) };
  expect(shownWords(two)).toBe("\u201CShown\u201D means that the interval leaves 0 out.");
});
