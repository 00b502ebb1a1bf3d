import { expect, it } from "vitest";
import { readImprovement } from "../../../../sim/questions/improve/index.ts";
import { inventedImprovement } from "../../../support/invented.ts";

it("gives an improvement back, and null for anything a report cannot be drawn from", () => {
  const json = JSON.parse(JSON.stringify(inventedImprovement()));
  expect(readImprovement(json)).toEqual(inventedImprovement());
  expect(readImprovement({ ...json, recommended: null })).not.toBeNull();
  for (const key of ["format", "words", "goal", "allocated", "finalists", "tried", "curve", "choice"])
    expect([key, readImprovement({ ...json, [key]: undefined })]).toEqual([key, null]);
  expect(readImprovement(null)).toBeNull();
});
