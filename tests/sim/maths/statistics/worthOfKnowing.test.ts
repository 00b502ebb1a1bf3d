import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import {
  chanceAboveZero,
  normalQuantile,
  withoutLuck,
  worthOfKnowing,
} from "../../../../sim/maths/statistics/index.ts";

/** Equally likely worlds of a standard normal: the middles of slices. */
const NORMAL = Array.from({ length: 20_000 }, (_, world) => normalQuantile((world + 0.5) / 20_000));

describe("worthOfKnowing", () => {
  it.each([
    [0, 1, 0.3989423],
    [1, 1, 0.0833155],
    [1, 2, 0.3955931],
    [2, 1, 0.0084907],
    [5000, 8000, 1295.360103],
    [-5000, 8000, 1295.360103],
    [5000, 6000, 679.829348],
    [5000, 5291.502622, 489.090967],
  ])(
    "of two options whose difference is normal with mean %d and sd %d is the unit normal loss %d",
    (mean, sd, exact) => {
      // Raiffa and Schlaifer 1961; slices leave 2e-4 of it.
      const found = worthOfKnowing([NORMAL.map(() => 0), NORMAL.map((z) => mean + sd * z)]);
      expect(Math.abs(found.value / exact - 1)).toBeLessThan(1e-3);
      expect(found.best).toBe(mean > 0 ? 1 : 0);
    },
  );

  it("of three independent standard normal options is 3 / (2 sqrt(pi)) (false alarm 0.001)", () => {
    const uniforms = uniformStream("three", 0, "test", "options");
    const options = [0, 1, 2].map(() => NORMAL.map(() => normalQuantile(uniforms.next())));
    // The greatest of three has a standard deviation of 0.748, and the greatest of three means takes about 0.006 off.
    expect(Math.abs(worthOfKnowing(options).value - 0.8462844)).toBeLessThan((3.29 * 0.748) / Math.sqrt(20_000) + 0.01);
  });

  it("gives every option's regret, that of the best being the value, and 0 where one is always best", () => {
    expect(
      worthOfKnowing([
        [0, 0],
        [2, -1],
      ]),
    ).toEqual({ best: 1, means: [0, 0.5], regrets: [1, 0.5], value: 0.5 });
    expect(
      worthOfKnowing([
        [1, 2],
        [0.1 + 0.2, 1],
      ]),
    ).toMatchObject({ best: 0, value: 0 });
  });
});

describe("withoutLuck", () => {
  it("leaves the mean and takes the spread down to what is not luck, to nothing where all of it may be", () => {
    const found = withoutLuck([1, 2, 3, 6], 2);
    expect(found.reduce((sum, value) => sum + value, 0)).toBeCloseTo(12, 12);
    const variance = found.reduce((sum, value) => sum + (value - 3) ** 2, 0) / 3;
    expect(variance).toBeCloseTo(14 / 3 - 2, 12);
    expect(withoutLuck([1, 2, 3], 5)).toEqual([2, 2, 2]);
    expect(withoutLuck([4, 4], 0)).toEqual([4, 4]);
  });
});

describe("chanceAboveZero", () => {
  it("is that of a normal quantity, whatever the luck that was added (false alarm 0.001)", () => {
    const uniforms = uniformStream("chance", 0, "test", "luck");
    const noisy = NORMAL.map((z) => 0.5 + z + 2 * normalQuantile(uniforms.next()));
    // P(Z > -0.5) is 0.6914625 (Abramowitz and Stegun 1964, table 26.1).
    expect(
      chanceAboveZero(
        NORMAL.map((z) => 0.5 + z),
        0,
      ),
    ).toBeCloseTo(0.6914625, 4);
    // The mean of 20,000 has a standard error of 0.016 and the spread one of 0.025, worth 0.0056 and 0.0044 of probability.
    expect(Math.abs(chanceAboveZero(noisy, 4) - 0.6914625)).toBeLessThan(3.29 * 0.0072);
  });

  it("knows no more than the days tell where worlds do not differ, and is a half at 0", () => {
    // Four worlds of mean 1 whose luck has variance 4: the mean of all has a standard error of 1.
    expect(chanceAboveZero([0, 2, 0, 2], 4)).toBeCloseTo(0.8413447, 6);
    expect(chanceAboveZero([0, 0, 0], 0)).toBe(0.5);
    expect(chanceAboveZero([1, 1], 0)).toBe(1);
    expect(chanceAboveZero([-1, -1], 0)).toBe(0);
  });
});
