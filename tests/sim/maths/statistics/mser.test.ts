import { describe, expect, it } from "vitest";
import { mser } from "../../../../sim/maths/statistics/index.ts";
import { WARM_UP_SERIES } from "../../../support/warmUpSeries.ts";

/** The definition, word for word. */
function naive(values: readonly number[], deleted: number): number {
  const kept = values.slice(deleted);
  const mean = kept.reduce((sum, value) => sum + value, 0) / kept.length;
  return kept.reduce((sum, value) => sum + (value - mean) ** 2, 0) / kept.length ** 2;
}

describe("mser (White 1997)", () => {
  it("deletes 13 of the sixty values of the worked series (recomputed with NumPy)", () => {
    const found = mser(WARM_UP_SERIES)!;
    expect(found).toMatchObject({ deleted: 13, kept: 47, runTooShort: false });
    expect(found.statistic).toBeCloseTo(0.0178765784, 10);
    expect(found.keptMean).toBeCloseTo(8.574468, 6);
  });

  it("gives the statistic of the definition for every number deleted, up to half", () => {
    const { statistics } = mser(WARM_UP_SERIES)!;
    expect(statistics).toHaveLength(31);
    statistics.forEach((value, deleted) => {
      expect(value).toBeCloseTo(naive(WARM_UP_SERIES, deleted), 12);
    });
  });

  it("deletes nothing of a run that is level, and takes the smaller of equal numbers", () => {
    expect(mser([5, 5, 5, 5, 5, 5])).toMatchObject({ deleted: 0, statistic: 0, keptMean: 5, runTooShort: false });
  });

  it("says that a run which climbs to its end was too short", () => {
    const climb = Array.from({ length: 40 }, (_, time) => time);
    expect(mser(climb)).toMatchObject({ deleted: 20, runTooShort: true });
  });

  it("has nothing to say of three values and refuses what is no number", () => {
    expect(mser([1, 2, 3])).toBeNull();
    expect(() => mser([1, 2, Number.NaN, 4])).toThrow(RangeError);
  });
});
