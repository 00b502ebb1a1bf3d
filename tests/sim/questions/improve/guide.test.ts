import { expect, it } from "vitest";
import type { MeanEstimate, Why } from "../../../../sim/days/results/index.ts";
import { guideOf } from "../../../../sim/questions/improve/guide.ts";
import { caseQuestion } from "../../../support/improving.ts";

function mean(value: number): MeanEstimate {
  return { n: 1, mean: value, sd: 0, halfWidth: null, low: null, high: null, min: value, max: value };
}

function why(
  work: Record<string, number>,
  places: Record<string, number> = {},
  people: Record<string, number> = {},
): Why {
  const part =
    (cause: "work" | "place" | "people") =>
    ([stage, seconds]: [string, number]) => {
      return { cause, stage, detail: "", label: "", seconds: mean(seconds) };
    };
  return {
    total: mean(1000),
    parts: [
      ...Object.entries(work).map(part("work")),
      ...Object.entries(places).map(part("place")),
      ...Object.entries(people).map(part("people")),
    ],
    stages: [],
    bottleneck: [],
    slopes: [],
    withheldSlopes: [],
  };
}

it("values places by the lesser of what binds on either side, and by what was held back", () => {
  const question = caseQuestion();
  const found = guideOf(why({ hanging: 100, stunning: 300, sticking: 200 }, { skinning: 40 }), [1, 3, 1], question);
  expect(found.more).toEqual([50, 50, 40]);
  expect(found.fewer[0]).toBe(100);
  expect(found.fewer[1]).toBeCloseTo(66.67, 2);
});

it("values people by the work of their stations and how long they were waited for", () => {
  const question = caseQuestion({}, 5);
  const found = guideOf(why({ skinning: 240 }, {}, { skinning: 60 }), [3, 3, 3, 3], question);
  expect(found.more).toEqual([0, 90, 0, 0]);
  expect(found.fewer).toEqual([0, 180, 0, 0]);
});

it("values options by the stages and crews that they speak of", () => {
  const question = caseQuestion({}, 8);
  const found = guideOf(why({ skinning: 240, hanging: 10 }), question.space.base as number[], question);
  expect(found.more).toEqual([10, 0, 0, 240, 0, 0, 240, 0]);
});
