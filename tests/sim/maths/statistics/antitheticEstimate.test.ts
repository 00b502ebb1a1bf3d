import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { antitheticEstimate, estimate, normalQuantile } from "../../../../sim/maths/statistics/index.ts";

describe("antitheticEstimate", () => {
  it("is the estimate of the pair means, with days counted and their extremes kept (by hand)", () => {
    const found = antitheticEstimate([610, 590, 604, 600, 612, 582], 0.95)!;
    const pairs = estimate([600, 602, 597], 0.95)!;
    expect(found).toMatchObject({ n: 3, days: 6, mean: pairs.mean, sd: pairs.sd, halfWidth: pairs.halfWidth });
    expect([found.min, found.max]).toEqual([582, 612]);
  });

  it("takes the luck out of a mean of straight-line responses altogether, and says so", () => {
    const days = Array.from({ length: 20 }, (_, pair) => {
      const u = uniformStream("5", pair, "test", "u").next();
      return [100 + 10 * u, 100 + 10 * (1 - u)];
    }).flat();
    const found = antitheticEstimate(days, 0.95)!;
    expect(found.mean).toBeCloseTo(105, 10);
    expect(found.halfWidth).toBeLessThan(1e-9);
    expect(found.words).toBe(
      "20 antithetic pairs: the interval is about 100 % narrower than that of 40 independent days would be.",
    );
  });

  it("says when pairs made it worse: days of a pair that go up and down together", () => {
    const found = antitheticEstimate([1, 1.1, 5, 5.1, 9, 9.1, 2, 2.1], 0.95)!;
    expect(found.halfWidthRatio).toBeGreaterThan(1.4);
    expect(found.words).toMatch(/wider than that of 8 independent days/);
  });

  it("covers the mean 926 to 971 times in 1,000, as 95 % intervals do with probability 0.999 (seed 6)", () => {
    let covered = 0;
    for (let run = 0; run < 1000; run++) {
      const uniforms = uniformStream("6", run, "test", "pairs");
      const normal = (): number => normalQuantile(Math.max(uniforms.next(), 2 ** -53));
      // What the two days of a pair share stays in its mean, what is mirrored goes.
      const days = Array.from({ length: 8 }, () => [10 + normal(), 3 * normal()] as const).flatMap(([shared, own]) => [
        shared + own,
        shared - own,
      ]);
      const { low, high } = antitheticEstimate(days, 0.95)!;
      if (low! <= 10 && 10 <= high!) covered += 1;
    }
    expect(covered).toBeGreaterThanOrEqual(926);
    expect(covered).toBeLessThanOrEqual(971);
  });

  it("tells not applicable from not enough data, and leaves broken pairs out", () => {
    expect(antitheticEstimate([1, null, null, 3], 0.95)).toBeNull();
    expect(antitheticEstimate([1, 3, null, 3], 0.95)).toMatchObject({
      ...{ n: 1, mean: 2, days: 2, halfWidth: null, halfWidthRatio: null, words: "1 antithetic pairs." },
    });
  });
});
