import { describe, expect, it } from "vitest";
import { breakdown } from "../../../support/breakdowns.ts";
import { constant, planOf, saturated, station, stream } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";

describe("a breakdown on running time", () => {
  it("interrupts the work, which goes on after the repair with the time left", () => {
    // Cycle 4, fails after every 10 s of work, repair 3: heads end at 4, 8, (2 s done, down 10-13) 15, 19, 23 ...
    const line = [station("a", 4, { breakdowns: [breakdown(10, 3)] })];
    const day = runChecked(planOf(saturated(6), line));
    expect(passes(day, "a", "end").slice(0, 6)).toEqual([4, 8, 15, 19, 23, 30]);
    expect(day.stages[0]!.stops).toBe(2);
    expect(secondsIn(day, "a")).toEqual({ working: 24, down: 6 });
  });

  it("does not age while the station idles", () => {
    // A head every 100 s, 4 s of work each: the tenth second of work falls into the third head.
    const day = runChecked(planOf(stream(constant(100), 3), [station("a", 4, { breakdowns: [breakdown(10, 3)] })]));
    expect(passes(day, "a", "end")).toEqual([104, 204, 307]);
  });

  it("counts each position's own working time", () => {
    // Two positions, heads at 1, 2, ..., cycle 4: both fail after 6 s of their own work.
    const line = [station("a", 4, { positions: 2, buffer: Infinity, breakdowns: [breakdown(6, 10)] })];
    const day = runChecked(planOf(stream(constant(1), 4), line));
    // Position 1: 1-5, 5-7 down to 17, done 19. Position 2: 2-6, 6-8 down to 18, done 20.
    expect(passes(day, "a", "end")).toEqual([5, 6, 19, 20]);
  });

  it("of the whole station runs while any position works and stops them all", () => {
    const jam = breakdown(6, 10, { scope: "station" });
    const line = [station("a", 4, { positions: 2, buffer: Infinity, breakdowns: [jam] })];
    const day = runChecked(planOf(stream(constant(1), 4), line));
    // Work from 1 on; the station stops at 7 (heads 3 and 4 have 2 and 3 s left) and goes on at 17.
    expect(passes(day, "a", "end")).toEqual([5, 6, 19, 20]);
    expect(day.stages[0]!.stops).toBe(1);
    expect(secondsIn(day, "a").down).toBe(20);
  });

  it("may have several kinds at once, each with its own clock", () => {
    const line = [station("a", 4, { breakdowns: [breakdown(5, 1), breakdown(7, 10, { name: "blade" })] })];
    const day = runChecked(planOf(saturated(3), line));
    // Work 0-5, jam 5-6, work 6-8 (7 s of work), blade 8-18, work 18-21 (10 s), jam 21-22, work 22-24: heads end at
    // work 4, 8, 12 = 4, 19, 24.
    expect(passes(day, "a", "end").slice(0, 3)).toEqual([4, 19, 24]);
  });
});

describe("a breakdown on calendar time", () => {
  const calendar = (uptime: number, repair: number, scope: "position" | "station" = "position") =>
    breakdown(uptime, repair, { clock: "calendar", scope });

  it("strikes an idle position too, which then takes no head until it is repaired", () => {
    const line = [station("a", 4, { buffer: Infinity, breakdowns: [calendar(90, 20)] })];
    const day = runChecked(planOf(stream(constant(100), 2), line));
    // Down 90-110: head 1 (at 100) runs 110-114; the next failure is at 200, repaired at 220: head 2 at 220-224.
    expect(passes(day, "a", "start")).toEqual([110, 220]);
    expect(secondsIn(day, "a")).toEqual({ working: 8, down: 40, starved: 176 });
  });

  it("interrupts and resumes work", () => {
    const day = runChecked(planOf(saturated(1), [station("a", 10, { breakdowns: [calendar(4, 5)] })]));
    // Work 0-4, down 4-9, work 9-13, down 13-18, work 18-20.
    expect(passes(day, "a", "end")[0]).toBe(20);
  });

  it("lets a finished head leave a position that is down, and the position takes nothing meanwhile", () => {
    // Head 2 is done at a at 4 and blocked until 9 (b takes 7: 2-9). a is down 6-12: head 2 leaves at 9, head 3 starts at 12.
    const line = [station("a", 2, { breakdowns: [calendar(6, 6)] }), station("b", 7)];
    const day = runChecked(planOf(saturated(2), line));
    expect(passes(day, "a", "exit").slice(0, 2)).toEqual([2, 9]);
    expect(passes(day, "a", "start")[2]).toBe(12);
  });

  it("overlaps with the position's own repair: work goes on when both are over", () => {
    const own = breakdown(3, 10);
    const line = [station("a", 5, { breakdowns: [own, { ...calendar(8, 20), name: "power" }] })];
    const day = runChecked(planOf(saturated(1), line));
    // Work 0-3, own repair 3-13, power 8-28, work 28-30.
    expect(passes(day, "a", "end")[0]).toBe(30);
    expect(secondsIn(day, "a")).toEqual({ working: 5, down: 25 });
  });
});
