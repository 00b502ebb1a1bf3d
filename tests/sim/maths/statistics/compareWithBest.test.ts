import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { compareWithBest, normalQuantile, studentQuantile } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

describe("compareWithBest (Hsu 1984)", () => {
  it("is the two-sided paired comparison for two variants, each against the other", () => {
    // Worked by hand from the sample's paired difference: 6.8 -+ t(0.975, 9) 2.6583203 / sqrt 10 = 6.8 -+ 1.901648.
    const width = (studentQuantile(0.975, 9) * 2.6583203) / Math.sqrt(10);
    const [base, variant] = compareWithBest([BASE_SAMPLE, VARIANT_SAMPLE], "more", 0.95)!;
    expect(variant!.gap).toBeCloseTo(6.8, 10);
    expect(variant!.low).toBe(0);
    expect(variant!.high).toBeCloseTo(6.8 + width, 6);
    expect(base!.low).toBeCloseTo(-6.8 - width, 6);
    expect(base).toMatchObject({ high: 0, mayBeBest: false });
    expect(variant!.mayBeBest).toBe(true);
  });

  it("turns round where less is better", () => {
    const [base, variant] = compareWithBest([BASE_SAMPLE, VARIANT_SAMPLE], "less", 0.95)!;
    expect([base!.mayBeBest, variant!.mayBeBest]).toEqual([true, false]);
    expect(base!.low).toBeLessThan(-6.8);
    expect(base!.high).toBe(0);
    expect(variant!.low).toBe(0);
    expect(variant!.gap).toBeCloseTo(6.8, 10);
  });

  it("keeps all that cannot be told apart, ties without spread among them", () => {
    expect(
      compareWithBest(
        [
          [1, 2],
          [1, 2],
          [0, 1],
        ],
        "more",
        0.95,
      )!.map(({ mayBeBest }) => mayBeBest),
    ).toEqual([true, true, false]);
  });

  it("covers all true gaps at once at least as often as stated, error probability under 0.001 (seed 11, 1,000 studies)", () => {
    const truth = [0, 0.3, 0.5, 0.5];
    const gaps = truth.map((mean, one) => mean - Math.max(...truth.filter((_, other) => other !== one)));
    const uniforms = uniformStream("11", 0, "test", "best");
    const normal = (): number => normalQuantile(uniforms.next() || 0.5);
    let covered = 0;
    for (let study = 0; study < 1000; study++) {
      const days = Array.from({ length: 10 }, normal);
      const values = truth.map((mean) => days.map((day) => mean + day + 0.5 * normal()));
      const found = compareWithBest(values, "more", 0.95)!;
      if (found.every(({ low, high }, variant) => low <= gaps[variant]! && gaps[variant]! <= high)) covered += 1;
    }
    // At exactly 95 % fewer than 928 of 1,000 would come up with a probability under 0.001 (binomial).
    expect(covered).toBeGreaterThanOrEqual(928);
  });

  it("uses whole replications only, and is null without two of them or two variants", () => {
    const gappy = compareWithBest(
      [
        [1, null, 3, 9],
        [0, 5, 1, 6],
      ],
      "more",
      0.95,
    );
    expect(gappy).toEqual(
      compareWithBest(
        [
          [1, 3, 9],
          [0, 1, 6],
        ],
        "more",
        0.95,
      ),
    );
    expect(
      compareWithBest(
        [
          [1, null],
          [2, 3],
        ],
        "more",
        0.95,
      ),
    ).toBeNull();
    expect(compareWithBest([[1, 2]], "more", 0.95)).toBeNull();
    expect(() => compareWithBest([[1], [1, 2]], "more", 0.95)).toThrow(RangeError);
  });
});
