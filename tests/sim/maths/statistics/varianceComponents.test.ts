import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile, varianceComponents } from "../../../../sim/maths/statistics/index.ts";

/** Worked examples: Searle, Casella and McCulloch 1992; digits by SciPy. */
const EQUAL = [
  [10.2, 9.6, 10.9, 10.1],
  [12.4, 11.8, 12.9, 12.1],
  [8.9, 9.7, 9.2, 9.0],
  [11.1, 10.4, 11.6, 10.9],
  [13.0, 12.2, 12.7, 13.3],
];
const UNEQUAL = [
  [5.1, 4.7, 5.6],
  [6.3, 6.9],
  [4.2, 4.8, 4.4, 4.6],
];

describe("varianceComponents", () => {
  it("splits equal groups, with the share's interval by F", () => {
    const found = varianceComponents(EQUAL, 0.95);
    expect(found.mean).toBeCloseTo(11.1, 12);
    expect(found.msBetween).toBeCloseTo(8.76, 12);
    expect(found.msWithin).toBeCloseTo(0.22, 12);
    expect(found.between).toBeCloseTo(2.135, 12);
    expect(found.share!.value).toBeCloseTo(0.9065817, 7);
    expect(found.share!.low).toBeCloseTo(0.7029711, 6);
    expect(found.share!.high).toBeCloseTo(0.9884954, 6);
  });

  it("tells how much larger what is not known is than the error of 20 replications (Ankenman and Nelson 2012)", () => {
    const ratio = (share: number) => Math.sqrt((20 * share) / (1 - share));
    const { value, low, high } = varianceComponents(EQUAL, 0.95).share!;
    expect(ratio(value)).toBeCloseTo(13.931651, 5);
    expect(ratio(low)).toBeCloseTo(6.879936, 5);
    expect(ratio(high)).toBeCloseTo(41.454055, 3);
  });

  it("splits unequal groups with n0 in place of n", () => {
    const found = varianceComponents(UNEQUAL, 0.95);
    expect(found.perGroup).toBeCloseTo(2.8888889, 7);
    expect(found.msBetween).toBeCloseTo(2.9444444, 7);
    expect(found.msWithin).toBeCloseTo(0.1311111, 7);
    expect(found.between).toBeCloseTo(0.9738462, 7);
  });

  it("may find nothing between groups, and never less", () => {
    const found = varianceComponents(
      [
        [1, 3],
        [1.5, 2.5],
      ],
      0.95,
    );
    expect(found.msBetween).toBeLessThan(found.msWithin);
    expect(found.between).toBe(0);
    expect(found.share).toMatchObject({ value: 0, low: 0 });
  });

  it("has no share where nothing varies, and all of it where nothing varies inside groups", () => {
    expect(
      varianceComponents(
        [
          [2, 2],
          [2, 2],
        ],
        0.95,
      ).share,
    ).toBeNull();
    expect(
      varianceComponents(
        [
          [2, 2],
          [3, 3],
        ],
        0.95,
      ).share,
    ).toEqual({ value: 1, low: 1, high: 1 });
  });

  it("is right on average: 2,000 layouts of known variances (false alarm 0.001)", () => {
    const uniforms = uniformStream("components", 0, "test", "split");
    const normal = () => normalQuantile(uniforms.next());
    const found = Array.from({ length: 2000 }, () => {
      const groups = Array.from({ length: 8 }, () => {
        const middle = 0.5 * normal();
        return Array.from({ length: 3 }, () => middle + normal());
      });
      const { msBetween, msWithin } = varianceComponents(groups, 0.95);
      return (msBetween - msWithin) / 3;
    });
    const mean = found.reduce((sum, value) => sum + value, 0) / found.length;
    const sd = Math.sqrt(found.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (found.length - 1));
    expect(Math.abs(mean - 0.25)).toBeLessThan((3.29 * sd) / Math.sqrt(found.length));
  });

  it("refuses what cannot be split", () => {
    expect(() => varianceComponents([[1, 2]], 0.95)).toThrow(RangeError);
    expect(() => varianceComponents([[1], [2]], 0.95)).toThrow(RangeError);
    expect(() => varianceComponents([[1, 2], []], 0.95)).toThrow(RangeError);
  });
});
