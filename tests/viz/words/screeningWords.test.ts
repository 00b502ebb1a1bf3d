import { expect, test } from "vitest";
import { rankedEffects, screeningWords, studyFormat } from "../../../viz/words/index.ts";
import { screeningResults } from "../../support/screeningResults.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const RESULTS = screeningResults();
const INFO = RESULTS.responses[0]!;

test("factors are ranked by the mean size of their effects; one without effects is left out", () => {
  expect(rankedEffects(RESULTS, INFO).map(({ name }) => name)).toEqual(["time per head", "walking", "places"]);
  expect(rankedEffects(syntheticStudy(), INFO)).toEqual([]);
});

test("the foremost factors are told with size and half-width, and when their direction depends on the rest", () => {
  const words = screeningWords(RESULTS, INFO, studyFormat(RESULTS, INFO));
  expect(words[0]).toMatch(/“time per head” matters most: .* by 46 heads\/h on average, give or take 2 heads\/h\.$/);
  expect(words[1]).toMatch(/“walking” comes next: .*; up or down depends on the other factors\.$/);
});
