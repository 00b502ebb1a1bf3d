import { expect, it } from "vitest";
import { stableJson } from "../../../../sim/days/results/index.ts";
import { readLineUp } from "../../../../sim/questions/options/index.ts";
import { inventedLineUp } from "../../../support/invented.ts";

it("gives a line-up back, endless paybacks too, and null for anything a report cannot be drawn from", () => {
  const json = JSON.parse(stableJson(inventedLineUp()));
  expect(json.options[0].worth.paybackYears.high).toBeNull();
  expect(readLineUp(json)).toEqual(inventedLineUp());
  for (const key of ["currency", "words", "options", "confidence"])
    expect([key, readLineUp({ ...json, [key]: undefined })]).toEqual([key, null]);
});
