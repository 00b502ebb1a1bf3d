import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { batchMeans, estimate, normalQuantile } from "../../../../sim/maths/statistics/index.ts";

/** An autoregressive run: each value is `phi` times the one before, and fresh luck. Mean 0. */
function series(length: number, phi: number, run: number): number[] {
  const uniforms = uniformStream("41", run, "test", `phi ${phi}`);
  let value = 0;
  return Array.from({ length }, () => {
    value = phi * value + normalQuantile(Math.max(uniforms.next(), 2 ** -53));
    return value;
  });
}

describe("batchMeans", () => {
  it("is the estimate of the batches' means, with the check worked by hand", () => {
    // Means 1 2 1 2 1 2 1 2: squares 8 * 0.25 = 2, steps 7, so C = 1 - 7/4 = -0.75; products -7 * 0.25, lag 1 -0.875.
    const values = Array.from({ length: 16 }, (_, index) => 1 + (Math.floor(index / 2) % 2));
    const found = batchMeans([99, ...values], 0.95, 8)!;
    expect(found).toMatchObject(estimate([1, 2, 1, 2, 1, 2, 1, 2], 0.95)!);
    expect(found).toMatchObject({ batches: 8, batchSize: 2, leftOut: 1, runTooShort: false });
    expect(found.lag1).toBeCloseTo(-0.875, 12);
    // z = -0.75 / sqrt(6/63) = -2.43027; one-sided p = 0.992456 (normal table).
    expect(found.independenceP).toBeCloseTo(0.992456, 5);
  });

  it("finds a run of strongly dependent values too short, and a long one of weakly dependent values not", () => {
    const short = batchMeans(series(200, 0.95, 0), 0.95)!;
    expect(short.runTooShort).toBe(true);
    expect(short.words).toMatch(
      /^The run is too short: its 20 batch means hang together \(correlation of neighbours 0\.\d\d\)/,
    );
    const long = batchMeans(series(20_000, 0.5, 0), 0.95)!;
    expect(long.runTooShort).toBe(false);
    expect(long.words).toMatch(/^Nothing shows that the 20 batch means hang together/);
  });

  it("raises a false alarm for about one in twenty independent runs: 28 to 74 of 1,000, probability 0.999", () => {
    let alarms = 0;
    for (let run = 0; run < 1000; run++) if (batchMeans(series(40, 0, run), 0.95)!.runTooShort) alarms += 1;
    expect(alarms).toBeGreaterThanOrEqual(28);
    expect(alarms).toBeLessThanOrEqual(74);
  });

  it("says that values which do not vary give nothing to check by", () => {
    expect(batchMeans(new Array(40).fill(3), 0.95)).toMatchObject({
      ...{ mean: 3, halfWidth: 0, lag1: null, independenceP: null, runTooShort: false },
      words: "The 20 batch means do not vary.",
    });
  });

  it("needs two values per batch, and eight batches", () => {
    expect(batchMeans(series(39, 0, 0), 0.95)).toBeNull();
    for (const batches of [7, 8.5, Number.NaN]) expect(() => batchMeans([1], 0.95, batches)).toThrow(RangeError);
  });
});
