import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import {
  controlVariateEstimate,
  estimate,
  normalQuantile,
  studentQuantile,
} from "../../../../sim/maths/statistics/index.ts";

const Y = [1, 3, 2, 6];
const X = { key: "x", mean: 10, values: [9, 10, 11, 12] };

describe("controlVariateEstimate (Lavenberg and Welch 1981)", () => {
  it("gives mean and interval of a small case worked by hand", () => {
    // See fitControls: intercept 2.3, residual squares 4.2 on 2 degrees of freedom, variance factor 1/4 + 0.05.
    const found = controlVariateEstimate(Y, [X], 0.95)!;
    expect(found.mean).toBeCloseTo(2.3, 12);
    expect(found.df).toBe(2);
    expect(found.sd).toBeCloseTo(Math.sqrt(2.1), 12);
    expect(found.halfWidth).toBeCloseTo(studentQuantile(0.975, 2) * Math.sqrt(2.1 * 0.3), 10);
    expect(found.plain).toEqual(estimate(Y, 0.95));
    expect(found.controls).toEqual([{ key: "x", coefficient: expect.closeTo(1.4, 10), missed: 0.5, doubtful: false }]);
    expect(found.words).toBe("1 of 1 controls used made the interval 1 % narrower.");
  });

  it("narrows the interval by sqrt(1 - r^2), degrees of freedom aside, and covers (1,000 intervals, seed 31)", () => {
    let covered = 0;
    let ratio = 0;
    for (let run = 0; run < 1000; run++) {
      const uniforms = uniformStream("31", run, "test", "control");
      const normal = (): number => normalQuantile(Math.max(uniforms.next(), 2 ** -53));
      const x = Array.from({ length: 20 }, () => 50 + normal());
      const y = x.map((value) => 7 + 4 * (value - 50) + 3 * normal());
      const found = controlVariateEstimate(y, [{ key: "x", mean: 50, values: x }], 0.95)!;
      if (found.low! <= 7 && 7 <= found.high!) covered += 1;
      ratio += found.halfWidthRatio! / 1000;
    }
    // Band of 1,000 exact 95 % intervals: 926 to 971 with probability 0.999 (binomial).
    expect(covered).toBeGreaterThanOrEqual(926);
    expect(covered).toBeLessThanOrEqual(971);
    // r = 4/5, so 0.6 and a little for the lost degree of freedom and the slope's own error.
    expect(ratio).toBeGreaterThan(0.58);
    expect(ratio).toBeLessThan(0.66);
  });

  it("warns where the known mean hardly fits, because the estimate would be wrong", () => {
    const values = [9, 10, 11, 9.5, 10.5, 10, 9.8, 10.2];
    const found = controlVariateEstimate([1, 2, 3, 1, 3, 2, 2, 2], [{ key: "heads", mean: 20, values }], 0.95)!;
    expect(found.controls[0]!.doubtful).toBe(true);
    expect(found.words).toMatch(/The known mean of 'heads' hardly fits these days: check it\.$/);
  });

  it("leaves the controls aside when there are too few replications, and those that do not vary", () => {
    const few = controlVariateEstimate(Y.slice(0, 3), [{ ...X, values: X.values.slice(0, 3) }], 0.95)!;
    expect(few).toMatchObject({ mean: 2, halfWidthRatio: null, controls: [{ coefficient: null }] });
    expect(few.words).toBe("Controls left aside: 1 of them need 4 replications or more.");
    const flat = controlVariateEstimate([...Y, 4], [{ key: "flat", mean: 3, values: [3, 3, 3, 3, 3] }], 0.95)!;
    expect(flat).toMatchObject({
      ...{ mean: 3.2, df: 4, halfWidthRatio: 1 },
      words: "0 of 1 controls used; the interval is as wide as without.",
    });
    expect(controlVariateEstimate(Y, [], 0.95)).toMatchObject({ mean: 3, words: "No controls." });
  });

  it("leaves out replications with a value missing anywhere", () => {
    const values = [...X.values, null, 5];
    const found = controlVariateEstimate([...Y, 4, null], [{ ...X, values }], 0.95)!;
    expect(found).toEqual(controlVariateEstimate(Y, [X], 0.95));
    expect(controlVariateEstimate([null], [{ ...X, values: [1] }], 0.95)).toBeNull();
  });
});
