import { expect, test } from "vitest";
import { readResults, stableJson } from "../../../../sim/days/results/index.ts";
import { exampleDay } from "../../../support/exampleDay.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

test("results read back are what was written, no limit included", () => {
  const results = exampleDay("ferncote");
  const { stages } = results.variants[0]!.day;
  expect(stages.some(({ places }) => places === Number.POSITIVE_INFINITY)).toBe(true);
  expect(readResults(stableJson(results)).results).toEqual(results);
  expect(stableJson(readResults(stableJson(handMadeResults())).results)).toBe(stableJson(handMadeResults()));
});

test("gates without a limit are infinite again", () => {
  const results = exampleDay("parts/gate");
  results.variants[0]!.day.gates[0]!.atMost = Number.POSITIVE_INFINITY;
  expect(readResults(stableJson(results)).results!.variants[0]!.day.gates[0]!.atMost).toBe(Number.POSITIVE_INFINITY);
});

test("a text that is cut off, or holds something else, is refused with the reason and the remedy", () => {
  expect(readResults(stableJson(handMadeResults()).slice(0, -100)).problem).toMatch(/no JSON; .*run it again/);
  expect(readResults("{}").problem).toMatch(/does not hold the results of a run \(at format\); name the folder/);
  const broken = { ...handMadeResults(), variants: [] };
  expect(readResults(stableJson(broken)).problem).toContain("(at variants)");
  expect(readResults(stableJson({ ...handMadeResults(), format: 4 })).problem).toContain("(at format)");
});
