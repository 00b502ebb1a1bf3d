import { expect, test } from "vitest";
import { responseTable } from "../../../viz/report/responseTable.ts";
import { syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

test("a few variants stand side by side, one row per response; many get one table per response", () => {
  const few = responseTable(syntheticStudy()).markup;
  expect(few.match(/<table/g)).toHaveLength(1);
  expect(few.match(/<th scope="row"/g)).toHaveLength(5);
  const many = responseTable(syntheticFactorial()).markup;
  expect(many.match(/<table/g)).toHaveLength(5);
  expect(many.match(/<th scope="row"/g)).toHaveLength(5 * 12);
});

test("a response that only some replications gave says how many", () => {
  const study = syntheticStudy();
  study.variants[1]!.estimates.throughput!.n = 17;
  expect(responseTable(study).markup).toContain("17 of 20 simulated days gave a value");
});

test("no response asked for is said in words", () => {
  expect(responseTable({ ...syntheticStudy(), responses: [] }).markup).toBe("<p>The study asks for no result.</p>");
});
