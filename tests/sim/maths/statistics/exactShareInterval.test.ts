import { describe, expect, it } from "vitest";
import { exactShareInterval, shareInterval } from "../../../../sim/maths/statistics/index.ts";
import { cephes } from "../../../support/cephes.ts";

describe("exactShareInterval (Clopper and Pearson 1934)", () => {
  it("has the closed form at the ends: 1 - (0.025)^(1/n) for no case", () => {
    expect(exactShareInterval(0, 50, 0.95)).toEqual({
      share: 0,
      low: 0,
      high: expect.closeTo(1 - 0.025 ** (1 / 50), 9),
    });
    expect(exactShareInterval(50, 50, 0.95)).toEqual({ share: 1, low: expect.closeTo(0.025 ** (1 / 50), 9), high: 1 });
  });

  it("has each bound where the binomial tail is half of the rest (Cephes)", () => {
    for (const [count, n] of [
      [7, 40],
      [81, 263],
      [1, 1000],
      [3, 10],
    ] as const) {
      const { low, high } = exactShareInterval(count, n, 0.95)!;
      expect(1 - cephes.bdtr(count - 1, n, low)).toBeCloseTo(0.025, 7);
      expect(cephes.bdtr(count, n, high)).toBeCloseTo(0.025, 7);
    }
  });

  it("stays within its stated error of the Cephes library", () => {
    let worst = 0;
    for (const n of [1, 2, 5, 10, 30, 100, 300, 1000, 5000]) {
      for (let count = 0; count <= n; count += Math.max(1, Math.floor(n / 23))) {
        for (const confidence of [0.5, 0.8, 0.95, 0.999]) {
          const { low, high } = exactShareInterval(count, n, confidence)!;
          const tail = (1 - confidence) / 2;
          if (count > 0) worst = Math.max(worst, Math.abs(low / cephes.incbi(count, n - count + 1, tail) - 1));
          if (count < n) worst = Math.max(worst, Math.abs(high / cephes.incbi(count + 1, n - count, 1 - tail) - 1));
        }
      }
    }
    expect(worst).toBeLessThan(1e-6);
    expect(worst).toBeGreaterThan(0);
  });

  it("covers every share at least as often as stated, which the narrower score interval does on average only", () => {
    const cover = (share: number, interval: typeof shareInterval): number => {
      let sum = 0;
      for (let count = 0; count <= 20; count++) {
        const { low, high } = interval(count, 20, 0.95)!;
        if (low <= share && share <= high)
          sum += cephes.bdtr(count, 20, share) - (count > 0 ? cephes.bdtr(count - 1, 20, share) : 0);
      }
      return sum;
    };
    const shares = Array.from({ length: 99 }, (_, index) => (index + 1) / 100);
    expect(Math.min(...shares.map((share) => cover(share, exactShareInterval)))).toBeGreaterThanOrEqual(0.95);
    expect(Math.min(...shares.map((share) => cover(share, shareInterval)))).toBeLessThan(0.95);
  });

  it("has nothing to say of no cases and refuses impossible counts", () => {
    expect(exactShareInterval(0, 0, 0.95)).toBeNull();
    expect(() => exactShareInterval(3, 2, 0.95)).toThrow(RangeError);
    expect(() => exactShareInterval(1, 2, 95)).toThrow(RangeError);
  });
});
