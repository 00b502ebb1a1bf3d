import { expect, test } from "vitest";
import { shownWords } from "../../../viz/words/index.ts";
import { syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

function words(errorRate: "family-wise" | "false discovery" | "per comparison"): string {
  const results = syntheticStudy();
  return shownWords({ ...results, procedure: { ...results.procedure, errorRate } });
}

test("says that an interval decides what is shown, and what it allows for", () => {
  expect(words("family-wise")).toMatch(
    /leaves 0 out\. .* allow for all variants at once \(Bonferroni.* is 5 % at most\.$/,
  );
  expect(words("false discovery")).toMatch(
    /leaves 0 out\. .* 5 % are false on average \(Benjamini and Hochberg 1995\).*Yekutieli 2005\)\.$/,
  );
  expect(words("per comparison")).toMatch(
    /Each interval stands by itself: .* chance alone would show about 0\.15 differences for each result in 3 comparisons/,
  );
});

test("says nothing where nothing is compared, and the plain thing for one comparison", () => {
  expect(shownWords(syntheticSingleDay())).toBe("");
  const results = syntheticStudy();
  const two = { ...results, variants: results.variants.slice(0, 2) };
  expect(shownWords(two)).toBe("A difference is \u201Cshown\u201D when its interval leaves 0 out.");
});
