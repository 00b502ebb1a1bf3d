import { describe, expect, it } from "vitest";
import { estimateDay } from "../../../../sim/questions/estimate/index.ts";
import { chain, planOf, saturated, station } from "../../../support/plans.ts";

const hung = (line: Parameters<typeof planOf>[1], heads: number) =>
  estimateDay(planOf(saturated(heads), line)).workFinishSeconds;

describe("the estimate of a day whose speed goes by the hour", () => {
  it("hangs the heads of each hour at its rate", () => {
    // 900 in the first hour, 450 in the second, then 720 an hour: 2070 heads take three hours.
    const pace = [
      { fromSeconds: 3600, speed: 0.5, mostPerSecond: null },
      { fromSeconds: 7200, speed: 1, mostPerSecond: 0.2 },
    ];
    const end = hung([station("a", 4, { pace })], 2070);
    expect(Math.abs(end - 3 * 3600)).toBeLessThan(3 * 3600 * 0.01);
    expect(hung([station("a", 4)], 2070)).toBeLessThan(8300);
  });

  it("follows a chain too, and hours before the day's start", () => {
    const pace = [{ fromSeconds: -60, speed: 0.5, mostPerSecond: null }];
    const line = (paces: typeof pace) => [station("hang", 1), chain("rail", 4, 2, [], { pace: paces })];
    expect(hung(line(pace), 1000)).toBeGreaterThan(1.9 * hung(line([]), 1000));
  });
});
