import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile, noticeableShift } from "../../../../sim/maths/statistics/index.ts";
import { compare } from "../../../../sim/questions/calibrate/compare.ts";
import { cephes } from "../../../support/cephes.ts";

const SEEN = [600, 612, 590, 605];
const DRAWN = [612, 598, 605, 621, 590, 609, 617, 600, 595, 613];

describe("compare", () => {
  it("of several observed days is Student's interval with pooled spread, wide enough for the family (Cephes)", () => {
    const { difference, low, high, p, observed, simulated } = compare(SEEN, DRAWN, 5, 0.95)!;
    const squares = (values: readonly number[], mean: number) => values.reduce((sum, x) => sum + (x - mean) ** 2, 0);
    const error = Math.sqrt(((squares(SEEN, 601.75) + squares(DRAWN, 606)) / 12) * (1 / 4 + 1 / 10));
    expect(difference).toBeCloseTo(-4.25, 12);
    expect(high - low).toBeCloseTo(2 * cephes.stdtri(12, 0.995) * error, 6);
    expect(p).toBeCloseTo(2 * cephes.stdtr(12, -4.25 / error), 6);
    expect(observed).toMatchObject({ days: 4, mean: 601.75 });
    expect(simulated).toMatchObject({ days: 10, mean: 606, min: 590, max: 621 });
  });

  it("of one observed day is the prediction interval of one more day (Cephes)", () => {
    const { low, high, p, shown, observed } = compare([640], DRAWN, 1, 0.95)!;
    const sd = Math.sqrt(DRAWN.reduce((sum, value) => sum + (value - 606) ** 2, 0) / 9);
    const half = cephes.stdtri(9, 0.975) * sd * Math.sqrt(1.1);
    expect([low, high]).toEqual([expect.closeTo(34 - half, 6), expect.closeTo(34 + half, 6)]);
    expect(p).toBeCloseTo(2 * cephes.stdtr(9, -34 / (sd * Math.sqrt(1.1))), 6);
    expect(shown).toBe(true);
    expect(observed).toMatchObject({ days: 1, low: null, high: null });
  });

  it("leaves out what is missing, and says so when nothing is left", () => {
    expect(compare([null, 600, null], [...DRAWN, null], 1, 0.95)!.observed.days).toBe(1);
    expect(compare([null], DRAWN, 1, 0.95)).toBeNull();
    expect(compare([600], [600, null], 1, 0.95)).toBeNull();
  });

  it("knows equal figures that never vary from different ones", () => {
    expect(compare([5, 5], [5, 5, 5], 1, 0.95)).toMatchObject({ difference: 0, shown: false });
    expect(compare([6, 6], [5, 5, 5], 1, 0.95)).toMatchObject({ difference: 1, shown: true });
    expect(compare([5], [5, 5, 5], 1, 0.95)).toMatchObject({ shown: false, p: 1 });
    expect(compare([6], [5, 5, 5], 1, 0.95)).toMatchObject({ shown: true });
  });

  it("tells how large a difference would be found in four of five cases (noncentral t, SciPy)", () => {
    const { noticeable, standardError } = compare(SEEN, DRAWN, 5, 0.95)!;
    // SciPy: scipy.stats.nct, 12 degrees of freedom, limits of 99 %.
    expect(noticeable / standardError).toBeCloseTo(3.9787, 3);
    expect(compare([5, 5], [5, 5, 5], 1, 0.95)!.noticeable).toBe(0);
  });

  /** True differences of just that size in 600 studies: 480 expected, 440 to 516 with probability 0.9995 (binomial). */
  it.each([1, 3, 12])("finds a difference of that size in four of five cases with %i observed days", (days) => {
    let found = 0;
    for (let replication = 0; replication < 600; replication++) {
      const uniforms = uniformStream("noticeable", replication, String(days), "days");
      const sample = (count: number, mean: number) =>
        Array.from({ length: count }, () => mean + 10 * normalQuantile(uniforms.next()));
      const size = 10 * Math.sqrt(1 / days + 1 / 20) * noticeableShift(days + 18, 1 - 0.05 / 8, 0.8);
      if (compare(sample(days, 600 + size), sample(20, 600), 8, 0.95)!.shown) found++;
    }
    expect(found).toBeGreaterThanOrEqual(440);
    expect(found).toBeLessThanOrEqual(516);
  });

  /** 400 families of 8 quantities at 5 %: 20 false alarms at most expected, 37 or more with probability 0.0003 (binomial). */
  it.each([1, 3, 8])(
    "with %i observed days finds a faultless plan to differ anywhere in no more than 5 of 100 cases",
    (days) => {
      let alarms = 0;
      for (let replication = 0; replication < 400; replication++) {
        const uniforms = uniformStream("compare", replication, String(days), "days");
        const sample = (count: number) =>
          Array.from({ length: count }, () => 600 + 10 * normalQuantile(uniforms.next()));
        const found = Array.from({ length: 8 }, () => compare(sample(days), sample(20), 8, 0.95)!.shown);
        if (found.some((shown) => shown)) alarms++;
      }
      expect(alarms).toBeLessThan(37);
      expect(alarms).toBeGreaterThan(3);
    },
  );
});
