import { describe, expect, it } from "vitest";
import { compareAll, pairedDifference } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

const FAMILY = { confidence: 0.95, errorRate: "family-wise" } as const;

/** Differences to the base whose p-values by themselves are 0.031 (3.4), 0.035 (3.3) and 0.72 (0.5). */
const weak = (shift: number): number[] => BASE_SAMPLE.map((value, day) => value + shift + (day % 2 === 0 ? 4 : -4));

describe("compareAll", () => {
  const values = [BASE_SAMPLE, VARIANT_SAMPLE, weak(3.4), weak(3.3), weak(0.5)];

  it("has nothing for the base and the paired difference for the others", () => {
    const found = compareAll(values, 0, FAMILY);
    expect(found[0]).toBeNull();
    const { shown: _, ...single } = pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    expect(found[1]).toMatchObject(single);
    expect(found[1]!.p).toBeCloseTo(2.02576e-5, 9);
    expect(found[1]!.holmP).toBeCloseTo(4 * 2.02576e-5, 8);
    expect(found.slice(1).map((one) => one!.comparisons)).toEqual([4, 4, 4, 4]);
  });

  it("widens the family's intervals by Bonferroni's t, 3.110935 for four comparisons of ten pairs (SciPy)", () => {
    const one = compareAll(values, 0, FAMILY)[1]!;
    expect(one.familyHigh! - one.mean).toBeCloseTo((3.110935 * 2.6583203) / Math.sqrt(10), 5);
    expect(one.familyLow! + one.familyHigh!).toBeCloseTo(2 * one.mean, 10);
  });

  it("keeps another error rate for each way of asking", () => {
    const shown = (errorRate: "family-wise" | "false discovery" | "per comparison") =>
      compareAll(values, 0, { confidence: 0.95, errorRate }).map((one) => one?.shown);
    expect(shown("per comparison")).toEqual([undefined, true, true, true, false]);
    expect(shown("false discovery")).toEqual([undefined, true, true, true, false]);
    expect(shown("family-wise")).toEqual([undefined, true, false, false, false]);
  });

  it("does not show what Holm's test would where Bonferroni's interval holds 0", () => {
    // Alone p = 0.035: doubled by Bonferroni it is too much, as the last step of Holm it is not.
    const found = compareAll([BASE_SAMPLE, VARIANT_SAMPLE, weak(3.3)], 0, FAMILY)[2]!;
    expect(found.holmP).toBeLessThan(0.05);
    expect(found.bonferroniP).toBeGreaterThan(0.05);
    expect(found.familyLow).toBeLessThan(0);
    expect(found.shown).toBe(false);
  });

  it("widens the intervals of false discovery by those shown: 1 - 3 x 0.05 / 4 for three of four", () => {
    const one = compareAll(values, 0, { confidence: 0.95, errorRate: "false discovery" })[3]!;
    // t(1 - 0.0375 / 2, 9) = 2.437795 (SciPy) times the standard error.
    expect(one.familyHigh! - one.mean).toBeCloseTo((2.437795 * one.sd) / Math.sqrt(10), 5);
  });

  it("is the plain paired comparison when there is only one", () => {
    const [, one] = compareAll([BASE_SAMPLE, VARIANT_SAMPLE], 0, FAMILY);
    const plain = pairedDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    expect(one).toMatchObject({ shown: true, holmP: one!.p });
    expect(one!.familyLow).toBeCloseTo(plain.low!, 8);
  });

  it("leaves out of the family what cannot be compared", () => {
    const found = compareAll(
      [
        [1, 2, 3],
        [null, null, 3],
        [null, null, null],
        [2, 4, 3.5],
      ],
      0,
      FAMILY,
    );
    expect(found[1]).toMatchObject({ n: 1, p: null, holmP: null, familyLow: null, shown: false, comparisons: 1 });
    expect(found[2]).toBeNull();
    expect(found[3]!.holmP).toBe(found[3]!.p);
    const same = compareAll(
      [
        [1, 2],
        [1, 2],
        [5, 9],
      ],
      0,
      FAMILY,
    )[1]!;
    expect(same).toMatchObject({ p: 1, shown: false });
  });
});
