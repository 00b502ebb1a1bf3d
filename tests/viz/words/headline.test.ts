import { expect, test } from "vitest";
import { furthestVariant, headline, isSingleDay } from "../../../viz/words/index.ts";
import { syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

test("the headline is the first response that the study asks for", () => {
  expect(headline(syntheticStudy())?.key).toBe("throughput");
});

test("the furthest variant is the one whose mean differs most from the base case, in either direction", () => {
  const study = syntheticStudy();
  expect(furthestVariant(study)?.name).toBe("One more at evisceration");
  study.variants[3]!.differences!.throughput!.mean = -90;
  expect(furthestVariant(study)?.name).toBe(study.variants[3]!.name);
});

test("a single day has no other variant, and is known as one", () => {
  expect(furthestVariant(syntheticSingleDay())).toBeNull();
  expect(isSingleDay(syntheticSingleDay())).toBe(true);
  expect(isSingleDay(syntheticStudy())).toBe(false);
});
