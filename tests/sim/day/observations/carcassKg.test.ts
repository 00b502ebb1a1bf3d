import { expect, it } from "vitest";
import { carcassOutKg, carcassSoldKg, livePaidKg, weighedLiveKg } from "../../../../sim/day/observations/carcassKg.ts";
import { readExample } from "../../../support/readExample.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const { presentation } = readExample("parts/presentation").plan;
const sold = (change: Partial<NonNullable<typeof presentation>>) => {
  return { ...WHOLE_PLAN, presentation: { ...presentation!, ...change } };
};

it("weighs the live animal at slaughter unless the plan goes by the farm", () => {
  expect(weighedLiveKg(98, WHOLE_PLAN)).toBe(98);
  expect(weighedLiveKg(98, sold({ liveWeight: "slaughter" }))).toBe(98);
  expect(weighedLiveKg(98, sold({}))).toBeCloseTo(100, 12);
});

it("pays for no head that was dead on arrival: 2500 less 25 kg", () => {
  expect(livePaidKg(wholeDay(), WHOLE_PLAN)).toBe(2475);
  expect(livePaidKg(wholeDay(), sold({}))).toBeCloseTo(2475 / 0.98, 9);
});

it("sells what comes out where nothing is told of a chill loss", () => {
  expect(carcassOutKg(wholeDay())).toBe(1380);
  expect(carcassSoldKg(wholeDay(), sold({}))).toBe(1380);
});
