import { expect, test } from "vitest";
import type { LevelStep, StudyResults } from "../../../sim/results/index.ts";
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
    "Step by step (95 %, all steps at once): places before evisceration, from 2 to 4: 8.0 heads/h more (+7.0 to +9.0), " +
      "from 4 to 8: 5.0 heads/h more (+4.0 to +6.0), from 8 to 16: no difference shown (\u22120.5 to +1.5), " +
      "from 16 to 32: no difference shown (\u22120.8 to +1.2).",
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
    /^Step by step, averaged [^:]*: b, from 1 to 2: 9\.0 .*\)\. In the same way, a, from 1 to 2: 2\.0 .*\)\.$/,
  );
});

test("of many steps the last that shows a difference is told", () => {
  const levels = ["1", "2", "3", "4", "5", "6"];
  const many = (last: number) => {
    const steps = levels.slice(1).map((_, index) => step(index, 3, index <= last));
    return words({ ...curve(steps), factors: [{ name: "places", path: "p", levels }] });
  };
  expect(many(1)).toContain("places, its last step that shows a difference is from 2 to 3: 3.0 heads/h more");
  expect(many(1)).toContain("and no later step shows a difference.");
  expect(many(4)).not.toContain("no later step");
  expect(many(-1)).toContain("none of its 5 steps shows a difference");
});

test("one day has no interval to tell", () => {
  expect(words(curve([{ ...step(0, 8, false), low: null, high: null }]))).toBe(
    "Step by step: places before evisceration, from 2 to 4: 8 heads/h more.",
  );
});

test("a study without steps is told in another way", () => {
  expect(words(curve(null))).toBeNull();
  expect(words(syntheticStudy())).toBeNull();
});
