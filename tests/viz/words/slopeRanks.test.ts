import { expect, test } from "vitest";
import type { SlopeEstimate } from "../../../viz/contract.ts";
import { rankedSlopes, slopeName } from "../../../viz/words/index.ts";

const slope = (stage: string, mean: number, meanSeconds: number): SlopeEstimate => {
  const estimate = { n: 2, mean, sd: 0, halfWidth: 0, low: mean, high: mean, min: mean, max: mean };
  return {
    ...{ parameter: "cycle time", stage, detail: "", label: "", meanSeconds },
    ...{ slope: estimate, rateSlope: estimate },
  };
};

test("slopes are ranked by what the same relative change would do, not by their size", () => {
  const ranked = rankedSlopes([
    slope("steep but short", 100, 1),
    slope("flat but long", 10, 60),
    slope("down", -900, 1),
  ]);
  expect(ranked.map(({ stage }) => stage)).toEqual(["down", "flat but long", "steep but short"]);
});

test("a slope is named after its stage, its time and what it belongs to", () => {
  expect(slopeName({ parameter: "repair time", stage: "skinning", detail: "jam" })).toBe("skinning: repair time (jam)");
  expect(slopeName({ parameter: "arrival", stage: "", detail: "load 1" })).toBe("load 1: arrival");
  expect(slopeName({ parameter: "arrival", stage: "", detail: "" })).toBe("heads: arrival");
});
