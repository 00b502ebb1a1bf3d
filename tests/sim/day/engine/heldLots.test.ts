import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/plan.ts";
import { runDays } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { handling, load } from "../../../support/loads.ts";
import { crateStep, dwell, planOf, station } from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

const liveHandling = handling([crateStep("unloading", 0), crateStep("feeding", 0)], [], { cratesAtHanging: 99 });

/** Hung at 1, 2 (a lot that is held), 3 and 4; chilled 100 s; packed one by one. */
function plan(untilSeconds: number, packing: number, buffer = Infinity): Plan {
  const line = [station("hanging", 1), dwell("chiller", 100, Infinity), station("packing", packing, { buffer })];
  const held = { in: "chiller", untilSeconds };
  const loads = [load("held", 0, 2, 1, { held }), load("free", 0, 2, 1)];
  return planOf({ kind: "loads", loads }, line, { liveHandling });
}

describe("a lot that is held", () => {
  it("hangs until it is released, and others pass it", () => {
    const day = runChecked(plan(200, 5), { binding: true });
    expect(passes(day, "packing", "start")).toEqual([200, 205, 103, 108]);
    expect(passes(day, "chiller", "end")).toEqual([200, 200, 103, 104]);
    expect(day.finishSeconds).toBe(210);
  });

  it("is released too early to matter: the day is the same as without", () => {
    expect(runChecked(plan(50, 5))).toEqual(runChecked(plan(0, 5)));
    expect(passes(runChecked(plan(50, 5)), "packing", "start")).toEqual([101, 106, 111, 116]);
  });

  it("goes before those behind it once released, but after the one that stands in the way out", () => {
    // 103 to 163 the first free one; the second, ready at 104, has the way out; released at 110.
    expect(passes(runChecked(plan(110, 60, 0)), "packing", "start")).toEqual([223, 283, 103, 163]);
  });

  it("stays overnight and leaves the next day, at its hour", () => {
    const closing = { stage: "chiller", untilSeconds: 150 };
    const today = plan(1050, 5);
    const tomorrow = plan(0, 5);
    const days = [{ ...today, day: { ...today.day, overnight: [closing] } }, tomorrow].map((each, number) => ({
      line: compileLine(each),
      startSeconds: number * 1000,
      number,
    }));
    const [first, second] = runDays(days, {
      ...{ seed: "test", replication: 0, calendarDays: 2, check: true, perHead: true },
    }).days;
    expect(first!.heads).toMatchObject({ out: { carcass: 2 }, onLine: 2 });
    // Kept ones first by number, then the day's own, of which the first is packed when its time is up.
    expect(passes(second!, "packing", "start")).toEqual([50, 55, 101, 106, 111, 116]);
  });
});
