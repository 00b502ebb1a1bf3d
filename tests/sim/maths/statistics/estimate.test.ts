import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { estimate, normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE } from "../../../support/workedSample.ts";

describe("estimate", () => {
  it("gives mean, spread and 95 % Student interval of the worked sample (recomputed with SciPy)", () => {
    const found = estimate(BASE_SAMPLE, 0.95)!;
    expect(found.n).toBe(10);
    expect(found.mean).toBeCloseTo(606, 12);
    expect(found.sd).toBeCloseTo(10.0995049, 7);
    expect(found.halfWidth).toBeCloseTo(7.2247506, 6);
    expect(found.low).toBeCloseTo(598.775249, 6);
    expect(found.high).toBeCloseTo(613.224751, 6);
    expect([found.min, found.max]).toEqual([590, 621]);
  });

  it("tells not applicable, not enough data and zero apart", () => {
    expect(estimate([null, null], 0.95)).toBeNull();
    expect(estimate([], 0.95)).toBeNull();
    expect(estimate([0, null], 0.95)).toMatchObject({ n: 1, mean: 0, halfWidth: null, low: null, high: null });
    expect(estimate([0, 0], 0.95)).toMatchObject({ n: 2, mean: 0, halfWidth: 0, low: 0, high: 0 });
  });

  it("covers the true mean of 1,000 small samples 926 to 971 times, as 95 % intervals do with probability 0.999 (seed 51)", () => {
    let covered = 0;
    for (let sample = 0; sample < 1000; sample++) {
      const uniforms = uniformStream("51", sample, "test", "cover");
      const values = Array.from({ length: 5 }, () => 12 + 3 * normalQuantile(Math.max(uniforms.next(), 2 ** -53)));
      const { low, high } = estimate(values, 0.95)!;
      if (low! <= 12 && 12 <= high!) covered += 1;
    }
    expect(covered).toBeGreaterThanOrEqual(926);
    expect(covered).toBeLessThanOrEqual(971);
  });

  it("leaves missing values out and counts the rest", () => {
    const gaps = BASE_SAMPLE.flatMap((value) => [value, null]);
    expect(estimate(gaps, 0.95)).toEqual(estimate(BASE_SAMPLE, 0.95));
  });

  it.each([0, 1, 95, Number.NaN])("refuses a confidence of %s", (confidence) => {
    expect(() => estimate(BASE_SAMPLE, confidence)).toThrow(/between 0 and 1/);
  });
});
