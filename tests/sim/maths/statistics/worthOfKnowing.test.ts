import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import {
  chanceAboveZero,
  chancesToBeBest,
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

describe("chancesToBeBest", () => {
  it("is one half, a quarter and a quarter of three that lead by two fair coins, whatever one is compared with", () => {
    // Leads over the first: the second is ahead in half of the worlds by 1, else behind by 1; the third likewise, on its own.
    const second = [1, 1, -1, -1];
    const third = [2, -2, 2, -2];
    expect(chancesToBeBest([null, { means: second, noise: 0 }, { means: third, noise: 0 }])).toEqual([0.25, 0.25, 0.5]);
    const minus = (other: readonly number[]) => other.map((lead, world) => lead - second[world]!);
    const other = [{ means: minus([0, 0, 0, 0]), noise: 0 }, null, { means: minus(third), noise: 0 }];
    expect(chancesToBeBest(other)).toEqual([0.25, 0.25, 0.5]);
  });

  it("of two is the chance of the one and the rest; of one alone and of equals nothing else", () => {
    const lead = { means: NORMAL.filter((_, world) => world % 100 === 50).map((z) => 0.4 + z), noise: 0.3 };
    const [first, second] = chancesToBeBest([null, lead]) as [number, number];
    expect(second).toBeCloseTo(chanceAboveZero(lead.means, lead.noise), 12);
    expect(first + second).toBeCloseTo(1, 12);
    expect(chancesToBeBest([null])).toEqual([1]);
    expect(chancesToBeBest([null, { means: [0, 0], noise: 0 }])).toEqual([0.5, 0.5]);
  });

  it("takes the luck of few days off: with the noise of days 4 times that of worlds, as the worlds' normals say (false alarm 0.001)", () => {
    // Leads of 0.5 + N(0, 1) and of N(0, 1), independent, seen with a noise of variance 0.25; the true order by 2,000,000 draws.
    const uniforms = uniformStream("best", 0, "test", "worlds");
    const draw = () => normalQuantile(uniforms.next());
    const worlds = Array.from({ length: 4000 }, () => [0.5 + draw(), draw()] as const);
    const means = (at: 0 | 1) => worlds.map((lead) => lead[at] + 0.5 * draw());
    const found = chancesToBeBest([null, { means: means(0), noise: 0.25 }, { means: means(1), noise: 0.25 }]);
    const share = (isBest: (a: number, b: number) => boolean) =>
      worlds.filter(([a, b]) => isBest(a, b)).length / worlds.length;
    const truth = [share((a, b) => a < 0 && b < 0), share((a, b) => a > 0 && a > b), share((a, b) => b > 0 && b > a)];
    found.forEach((chance, option) => {
      // The noise moves a world across the line now and then, to either side: no more than 0.4 of a binomial's error.
      expect(Math.abs(chance - truth[option]!)).toBeLessThan(3.29 * Math.sqrt(0.25 / 4000));
    });
  });
});
