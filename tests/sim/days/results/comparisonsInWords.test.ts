import { describe, expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { comparisonWords } from "../../../../sim/days/results/comparisonsInWords.ts";
import { comparisonsInWords, differenceInWords } from "../../../../sim/days/results/index.ts";
import type { Comparison } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

const INFO: ResponseInfo = { key: "t", label: "Throughput", unit: "carcasses/h", format: "number", better: "more" };

const FAMILY = { confidence: 0.95, errorRate: "family-wise" } as const;

/** Differences to the base whose p-values by themselves are 0.031 (3.4), 0.035 (3.3) and 0.72 (0.5). */
const weak = (shift: number): number[] => BASE_SAMPLE.map((value, day) => value + shift + (day % 2 === 0 ? 4 : -4));

describe("comparisonsInWords", () => {
  const values = [BASE_SAMPLE, VARIANT_SAMPLE, weak(3.4), weak(3.3), weak(0.5)];

  it("says the family's interval and what it allows for, or that no difference is shown", () => {
    const found = comparisonsInWords(values, 0, FAMILY, INFO);
    expect(found[1]!.words).toBe(
      "7 carcasses/h more than today's plan (4 to 9 carcasses/h at 95 %, sure even though 4 changes were compared; on the same 10 days).",
    );
    expect(found[4]!.words).toMatch(
      /^No difference from today's plan shown \(less than \d.* at 95 %, sure even though 4 changes were compared; on the same 10 days\)\.$/,
    );
    const discovery = comparisonsInWords(values, 0, { confidence: 0.95, errorRate: "false discovery" }, INFO);
    expect(discovery[2]!.words).toMatch(
      /^3\.4 carcasses\/h more than today's plan \(0\.\d.* at 95 %, allowing for 4 changes compared; on the same 10 days\)\.$/,
    );
  });

  it("says that no difference is shown by the interval that its verdict goes by, not by Holm's test", () => {
    const found = comparisonsInWords([BASE_SAMPLE, VARIANT_SAMPLE, weak(3.3)], 0, FAMILY, INFO)[2]!;
    expect(found.holmP).toBeLessThan(0.05);
    expect(found.words).toMatch(/^No difference from today's plan shown \(less than \d/);
  });

  it("says the plain paired comparison when there is only one, and that days are the same", () => {
    const [, one] = comparisonsInWords([BASE_SAMPLE, VARIANT_SAMPLE], 0, FAMILY, INFO);
    expect(one!.words).toBe(differenceInWords(VARIANT_SAMPLE, BASE_SAMPLE, 0.95, INFO)!.words);
    const days = [1, 2];
    expect(comparisonsInWords([days, days, [5, 9]], 0, FAMILY, INFO)[1]!.words).toBe(
      "The same as today's plan on all 2 days.",
    );
  });
});

const FINISH: ResponseInfo = { key: "f", label: "End", unit: "s", format: "clock", better: "less" };

const ONE: Comparison = {
  ...{ n: 10, mean: -600, sd: 120, halfWidth: 90, low: -690, high: -510, min: -900, max: -300 },
  ...{ relativeLow: null, relativeHigh: null, shown: true },
  ...{ p: 1e-6, holmP: 3e-6, bonferroniP: 3e-6, benjaminiHochbergP: 2e-6 },
  ...{ familyLow: -720, familyHigh: -480, comparisons: 3 },
};

it("comparisonWords speaks of a time of day as earlier and later", () => {
  expect(comparisonWords(ONE, { confidence: 0.9, errorRate: "family-wise" }, FINISH)).toBe(
    "10 min earlier than today's plan (8 to 12 min at 90 %, sure even though 3 changes were compared; on the same 10 days).",
  );
});

it("comparisonWords says the single interval where each comparison stands by itself", () => {
  expect(comparisonWords(ONE, { confidence: 0.95, errorRate: "per comparison" }, FINISH)).toBe(
    "10.0 min earlier than today's plan (8.5 to 11.5 min at 95 %; on the same 10 days).",
  );
});

it("comparisonWords says that data are missing", () => {
  const lone = { ...ONE, n: 1, low: null, high: null, familyLow: null, familyHigh: null };
  expect(comparisonWords(lone, { confidence: 0.95, errorRate: "family-wise" }, FINISH)).toMatch(
    /^Not enough simulated days to tell \(1 compared/,
  );
});
