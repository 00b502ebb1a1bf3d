import { describe, expect, it } from "vitest";
import { mser5 } from "../../../../sim/maths/statistics/index.ts";
import { WARM_UP_SERIES } from "../../../support/warmUpSeries.ts";

describe("mser5 (White, Cobb and Spratt 2000)", () => {
  it("deletes four fives of the worked series, with the statistic at each step (recomputed with NumPy)", () => {
    const found = mser5(WARM_UP_SERIES)!;
    expect(found).toMatchObject({ deleted: 20, kept: 40, runTooShort: false });
    expect(found.keptMean).toBeCloseTo(8.7, 12);
    const expected = [0.40240741, 0.13974455, 0.03504, 0.00636488, 0.00125, 0.00139942];
    expected.forEach((value, deleted) => {
      expect(found.statistics[deleted]).toBeCloseTo(value, 8);
    });
  });

  it("does not fall for the last five, which by itself would give 0", () => {
    expect(mser5(WARM_UP_SERIES)!.statistics).toHaveLength(7);
  });

  it("leaves out what fills no five, and needs twenty values", () => {
    expect(mser5([...WARM_UP_SERIES, 0, 0, 0, 0])).toEqual(mser5(WARM_UP_SERIES));
    expect(mser5(WARM_UP_SERIES.slice(0, 19))).toBeNull();
  });
});
