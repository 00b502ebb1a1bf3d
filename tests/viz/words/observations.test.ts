import { expect, test } from "vitest";
import { observationNoun, observationsOf, observationsWords } from "../../../viz/words/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("an observation is a replication, or a pair of antithetic ones", () => {
  const results = syntheticStudy();
  expect([observationNoun(results), observationsOf(results, { days: 20 })]).toEqual(["simulated days", 20]);
  const pairs = { ...results, procedure: { ...results.procedure, observation: "antithetic pair" as const } };
  expect([observationNoun(pairs), observationsOf(pairs, { days: 20 })]).toEqual(["pairs of simulated days", 10]);
});

test("variants that were given up on the way are remembered", () => {
  const results = syntheticStudy();
  expect(observationsWords(results)).toBe("20 simulated days");
  results.variants[1]!.days = 10;
  expect(observationsWords(results)).toBe("up to 20 simulated days");
});
