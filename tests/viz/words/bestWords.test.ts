import { expect, test } from "vitest";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import { bestWords, ranking } from "../../../viz/words/index.ts";
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
  return bestWords(results, info);
};

test("the best is told with its difference to the base", () => {
  expect(words(study({ 3: { gap: 2, mayBeBest: true } }))).toMatch(
    /^Best of 12 is “32 places, 4.8 s”, 12.* heads\/h more than today's plan \(.*\); all others are worse\.$/,
  );
});

test("who cannot be told from it is counted, and the one closest to today's plan named", () => {
  const some = { 1: { gap: -1, mayBeBest: true }, 2: { gap: -0.5, mayBeBest: true }, 3: { gap: 0.5, mayBeBest: true } };
  expect(words(study(some))).toMatch(
    /; 2 others may be as good; the one closest to today's plan is “8 places, 4.8 s”\.$/,
  );
  const one = { 2: { gap: -0.5, mayBeBest: true }, 3: { gap: 0.5, mayBeBest: true } };
  expect(words(study(one))).toMatch(/; only “16 places, 4.8 s” may be as good\.$/);
});

test("where less is better the smallest gap wins; the base may be the best", () => {
  expect(words(study({ 0: { gap: -30, mayBeBest: true } }), { better: "less" })).toMatch(
    /^Best of 12 is today's plan, “4 places, 4.8 s”; /,
  );
});

test("without a wanted direction, or without such comparisons, there is no best", () => {
  expect(words(study({}), { better: null })).toBeNull();
  expect(words(syntheticFactorial())).toBeNull();
});

test("today's plan is no rival of a variant that is shown to differ from it", () => {
  const results = study({ 0: { gap: -1, mayBeBest: true }, 3: { gap: 1, mayBeBest: true } });
  expect(results.variants[3]!.differences!.throughput!.shown).toBe(true);
  expect(words(results)).toMatch(/; all others are worse\.$/);
});

const END = { key: "finish", label: "End of work", unit: "s", format: "clock", better: "less" } as const;
const RATE = { key: "headsPerHour", label: "Throughput", unit: "heads/h", format: "number", better: "more" } as const;

/** Where the end of work is asked for; the last variant hangs so many heads more. */
function ends(more: number, responses: StudyResults["responses"]): StudyResults {
  const results = { ...study({}), responses };
  results.variants.forEach((variant, index) => {
    variant.day = { ...variant.day, heads: { ...variant.day.heads, hung: 500 + (index === 11 ? more : 0) } };
    const gap = { low: -9, high: 9, mayBeBest: index === 0 || index === 11 };
    variant.againstBest = {
      finish: { ...gap, gap: index === 0 ? -60 : 60 },
      headsPerHour: { ...gap, gap: index === 11 ? 5 : -5 },
    };
    variant.differences = index === 0 ? null : { headsPerHour: { ...variant.differences!.throughput!, shown: true } };
  });
  return results;
}

test("variants that handle different numbers of heads are not ranked by the end of work, but by throughput", () => {
  const results = ends(200, [END, RATE]);
  expect(ranking(results, END).by).toBe(RATE);
  expect(bestWords(results, END)).toMatch(
    /^The variants handle different numbers of heads \(500 to 700 on the first day\), so the end of work alone cannot rank them\. By throughput, the best of 12 is “32 places/,
  );
});

test("without a response to rank them by, it is said what to ask for; with equal numbers the end of work ranks", () => {
  expect(bestWords(ends(200, [END]), END)).toMatch(/cannot rank them\. Ask the study for 'headsPerHour'/);
  expect(bestWords(ends(0, [END, RATE]), END)).toMatch(/^Best of 12 is today's plan, /);
  // One head lost in transport more or less is luck.
  expect(bestWords(ends(1, [END, RATE]), END)).toMatch(/^Best of 12 is today's plan, /);
});
