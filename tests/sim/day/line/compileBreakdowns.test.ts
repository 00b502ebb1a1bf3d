import { describe, expect, it } from "vitest";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { crew, planOf, saturated, station } from "../../../support/plans.ts";
import { shared } from "../../../support/sharedBreakdowns.ts";

describe("compileBreakdowns", () => {
  it("has a unit for every position or one for the whole station, those on a position's own working time first", () => {
    const line = [
      station("a", 1, { positions: 2, breakdowns: [breakdown(5, 1, { name: "power", scope: "station" })] }),
      station("b", 1, {
        positions: 2,
        breakdowns: [breakdown(5, 1), breakdown(9, 1, { name: "air", clock: "calendar" })],
      }),
    ];
    const { breakdowns, positions } = compileLine(planOf(saturated(1), line));
    expect(breakdowns.names).toEqual(["jam", "jam", "power", "air", "air"]);
    expect(breakdowns.ownCount).toBe(2);
    expect(Array.from(breakdowns.positionFrom)).toEqual([2, 3, 0, 2, 3]);
    expect(Array.from(breakdowns.positionTo)).toEqual([3, 4, 2, 3, 4]);
    expect(Array.from(positions.ownBreakdownFrom)).toEqual([0, 0, 0, 1, 2]);
    // Only the station-wide one counts the time in which any position works.
    expect(Array.from(breakdowns.stationClock)).toEqual([2]);
    expect(Array.from(breakdowns.onRunningTime)).toEqual([1, 1, 1, 0, 0]);
  });

  it("puts what stops several stages last, with its stages in line order and how many of them must run", () => {
    const line = [station("a", 1, { breakdowns: [breakdown(5, 1)] }), station("b", 1), station("c", 1)];
    const sharedBreakdowns = [
      shared(["c", "a"], 5, 1, { clock: "all running" }),
      shared(["b", "c"], 5, 1, { name: "power", clock: "calendar" }),
    ];
    const { breakdowns } = compileLine(planOf(saturated(1), line, { sharedBreakdowns }));
    expect(breakdowns.names).toEqual(["jam", "board", "power"]);
    expect(breakdowns.sharedFrom).toBe(1);
    expect(Array.from(breakdowns.stopped)).toEqual([0, 2, 1, 2]);
    expect(Array.from(breakdowns.runningLeast)).toEqual([1, 2, 1]);
    expect(Array.from(breakdowns.stationClockFrom)).toEqual([0, 1, 1, 2]);
    expect(Array.from(breakdowns.onRunningTime)).toEqual([1, 1, 0]);
  });

  it("names the crew that repairs and the stage that takes the head in hand", () => {
    const line = [
      station("a", 1, { breakdowns: [breakdown(5, 1, { crew: "fitters", headInHand: { to: "trim" } })] }),
      station("b", 1, { breakdowns: [breakdown(5, 1)] }),
      station("trim", 1, { offLine: true }),
    ];
    const { breakdowns } = compileLine(planOf(saturated(1), line, { crews: [crew("others", 1), crew("fitters", 1)] }));
    expect(Array.from(breakdowns.crew)).toEqual([1, -1]);
    expect(Array.from(breakdowns.headTo)).toEqual([2, -1]);
  });
});
