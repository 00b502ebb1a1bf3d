import { expect, it } from "vitest";
import { stableJson } from "../../../../sim/days/results/index.ts";
import { readOptionsResult } from "../../../../sim/questions/options/index.ts";
import { inventedOptionsResult } from "../../../support/invented.ts";

it("gives a line-up back, endless paybacks too, and null for anything a report cannot be drawn from", () => {
  const json = JSON.parse(stableJson(inventedOptionsResult()));
  expect(json.options[0].worth.paybackYears.high).toBeNull();
  expect(readOptionsResult(json)).toEqual(inventedOptionsResult());
  for (const key of ["currency", "words", "options", "confidence"])
    expect([key, readOptionsResult({ ...json, [key]: undefined })]).toEqual([key, null]);
});
