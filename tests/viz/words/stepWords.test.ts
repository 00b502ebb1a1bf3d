import { expect, test } from "vitest";
import type { LevelStep, StudyResults } from "../../../sim/days/results/index.ts";
import { stepWords, studyFormat } from "../../../viz/words/index.ts";
import { syntheticCurve, syntheticStudy } from "../../support/syntheticStudy.ts";

const words = (results: StudyResults) => {
  const info = results.responses[0]!;
  return stepWords(results, info, studyFormat(results, info))?.join(" ") ?? null;
};

function step(from: number, mean: number, shown: boolean): LevelStep {
  return { from, to: from + 1, n: 20, mean, low: mean - 1, high: mean + 1, shown, comparisons: 4 };
}

function curve(steps: LevelStep[] | null): StudyResults {
  return { ...syntheticCurve(), levelSteps: { throughput: [steps] } };
}

test("each step is told with its interval, and one that shows nothing is not given a size", () => {
  const steps = [step(0, 8, true), step(1, 5, true), step(2, 0.5, false), step(3, 0.2, false)];
  expect(words(curve(steps))).toBe(
    "Places before evisceration: 8.0 heads/h more with 4 instead of 2 (+7.0 to +9.0), " +
      "5.0 heads/h more with 8 instead of 4 (+4.0 to +6.0), no difference shown with 16 instead of 8 (\u22120.5 to +1.5), " +
      "no difference shown with 32 instead of 16 (\u22120.8 to +1.2). Ranges are at 95 %, sure even though 4 steps were compared.",
  );
});

test("each factor has its sentence, the one that moves most first", () => {
  const factors = ["a", "b"].map((name) => ({ name, path: name, levels: ["1", "2"] }));
  const results = {
    ...syntheticCurve(),
    factors,
    levelSteps: { throughput: [[step(0, 2, true)], [step(0, -9, true)]] },
  };
  expect(words(results)).toMatch(
    /^B: 9\.0 heads\/h less with 2 instead of 1 \(.*\)\. A: 2\.0 heads\/h more with 2 instead of 1 \(.*\)\. Each figure is an average over the other factors; ranges are at 95 %/,
  );
});

test("of many steps the last that shows a difference is told", () => {
  const levels = ["1", "2", "3", "4", "5", "6"];
  const many = (last: number) => {
    const steps = levels.slice(1).map((_, index) => step(index, 3, index <= last));
    return words({ ...curve(steps), factors: [{ name: "places", path: "p", levels }] });
  };
  expect(many(1)).toContain("Places: the last step that shows a difference is 3.0 heads/h more with 3 instead of 2");
  expect(many(1)).toContain("; beyond that no step shows a difference.");
  expect(many(4)).not.toContain("beyond that");
  expect(many(-1)).toContain("none of its 5 steps makes a difference that shows");
});

test("one day has no interval to tell", () => {
  expect(words(curve([{ ...step(0, 8, false), low: null, high: null }]))).toBe(
    "Places before evisceration: 8 heads/h more with 4 instead of 2.",
  );
});

test("a study without steps is told in another way", () => {
  expect(words(curve(null))).toBeNull();
  expect(words(syntheticStudy())).toBeNull();
});
