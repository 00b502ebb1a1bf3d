import { expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { comparisonWords } from "../../../../sim/days/results/comparisonWords.ts";
import type { Comparison } from "../../../../sim/maths/statistics/index.ts";

const FINISH: ResponseInfo = { key: "f", label: "End", unit: "s", format: "clock", better: "less" };
const ONE: Comparison = {
  ...{ n: 10, mean: -600, sd: 120, halfWidth: 90, low: -690, high: -510, min: -900, max: -300 },
  ...{ relativeLow: null, relativeHigh: null, shown: true },
  ...{ p: 1e-6, holmP: 3e-6, bonferroniP: 3e-6, benjaminiHochbergP: 2e-6 },
  ...{ familyLow: -720, familyHigh: -480, comparisons: 3 },
};

it("comparisonWords speaks of a time of day as earlier and later", () => {
  expect(comparisonWords(ONE, { confidence: 0.9, errorRate: "family-wise" }, FINISH)).toBe(
    "10 min earlier than today's plan (\u221212 to \u22128 min at 90 %, sure even though 3 changes were compared; on the same 10 days).",
  );
});

it("comparisonWords says the single interval where each comparison stands by itself", () => {
  expect(comparisonWords(ONE, { confidence: 0.95, errorRate: "per comparison" }, FINISH)).toBe(
    "10.0 min earlier than today's plan (\u221211.5 to \u22128.5 min at 95 %; on the same 10 days).",
  );
});

it("comparisonWords says that data are missing", () => {
  const lone = { ...ONE, n: 1, low: null, high: null, familyLow: null, familyHigh: null };
  expect(comparisonWords(lone, { confidence: 0.95, errorRate: "family-wise" }, FINISH)).toMatch(
    /^Not enough simulated days to tell \(1 compared/,
  );
});
