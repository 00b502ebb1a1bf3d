import { describe, expect, it } from "vitest";
import type { Crew, LateHelp, Plan, TimeLimit } from "../../../../../sim/asked/plan/plan.ts";
import { breakdown } from "../../../../support/breakdowns.ts";
import { constant, crew, dwell, manual, planOf, station, stream } from "../../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../../support/timeline.ts";

// Worked by hand, in seconds. One head comes at 5 and is stunned 5-7; sticking, 2 s of work, is down from 6 on for as long as
// a test says: nobody could know. Help is called for 8 s after the end of stunning and takes 3 s.

const LIMIT: TimeLimit = {
  name: "stun to stick",
  from: { stage: "stun", moment: "end" },
  to: { stage: "stick", moment: "start" },
  minSeconds: null,
  maxSeconds: 10,
  source: "",
};
const BLED: TimeLimit = {
  ...LIMIT,
  name: "bled",
  from: { stage: "stick", moment: "end" },
  to: { stage: "bleed", moment: "end" },
};

function planWith(
  repairSeconds: number,
  late: Partial<LateHelp>,
  crews: Crew[] = [],
  changes: Partial<Plan> = {},
): Plan {
  const jam = breakdown(6, repairSeconds, { clock: "calendar" });
  const line = [
    station("stun", 2, { buffer: Infinity }),
    station("stick", 2, { breakdowns: [jam] }),
    dwell("bleed", 10, 20),
    manual("pack", 12, "stand-by", { buffer: Infinity }),
  ];
  return planOf(stream(constant(5), 1), line, {
    crews: crews.length > 0 ? crews : [crew("stand-by", 1)],
    limits: [LIMIT, BLED],
    stunned: {
      from: "stun",
      to: "stick",
      hold: true,
      late: { afterSeconds: 8, help: "stun again", takesSeconds: 3, crew: null, ...late },
    },
    ...changes,
  });
}

describe("a head that is stunned again", () => {
  it("may wait anew from then on, and every wait is counted", () => {
    // Due at 15: stunned again 15-18; due at 26: 26-29; the sticker is repaired at 36. Waits 8, 8 and 7 s.
    const day = runChecked(planWith(30, {}));
    expect(passes(day, "stick", "start")).toEqual([36]);
    expect(day.stunned).toEqual({ stunnedAgain: 2, stuckThere: 0 });
    expect([...day.perHead!.stunnedAgain]).toEqual([2]);
    expect(day.limits[0]).toMatchObject({ beyond: 0, tally: { count: 3, min: 7, max: 8, mean: 23 / 3 } });
  });

  it("is done with when its sticking begins: who stuns it is free, and the wait is counted once", () => {
    // Repaired at 16, in the middle of the second stun: stuck 16-18, bleeds until 28, and is packed by whoever stunned.
    const day = runChecked(planWith(10, { crew: "stand-by" }));
    expect(passes(day, "stick", "start")).toEqual([16]);
    expect(day.limits[0]!.tally).toMatchObject({ count: 1, max: 8 });
    expect(day.crews[0]).toMatchObject({ jobSeconds: 1, busySeconds: 1 + 12 });
  });

  it("waits longer while nobody is free, and is outside its limit then", () => {
    // Heads at 5 and 10 without the hold: both are stunned by 12. Only one person helps: head 1 is due at 15 and stunned
    // again 15-18, head 2, due at 20, 20-23. With 6 s for it: 15-21 and 21-27, head 2 after 9 s; with 9 s after 12 s.
    const two = (takesSeconds: number) => {
      const plan = planWith(40, { takesSeconds, afterSeconds: 8 });
      const line = [...plan.line];
      line[1] = { ...line[1]!, buffer: 3 } as (typeof line)[1];
      return runChecked({
        ...plan,
        supply: stream(constant(5), 2),
        line,
        stunned: { ...plan.stunned!, hold: false },
      }).limits[0]!;
    };
    expect(two(3)).toMatchObject({ beyond: 0 });
    expect(two(6).tally.max).toBe(9);
    expect(two(9)).toMatchObject({ tally: { max: 12 } });
    expect(two(9).beyond).toBeGreaterThan(0);
  });
});

describe("a head that is stuck where it is", () => {
  it("has waited until that moment, and passes the sticking station unworked", () => {
    // Stuck 15-18, 8 s after its stunning; the station is up again at 36 and lets it through at once; it bleeds until 46.
    const day = runChecked(planWith(30, { help: "stick there" }));
    expect(day.stunned).toEqual({ stunnedAgain: 0, stuckThere: 1 });
    expect([...day.perHead!.stuckThere]).toEqual([1]);
    expect([passes(day, "stick", "start"), passes(day, "stick", "end")]).toEqual([[15], [18]]);
    expect(passes(day, "bleed", "entry")).toEqual([36]);
    expect(secondsIn(day, "stick").working).toBeUndefined();
    expect(day.limits.map(({ tally }) => [tally.count, tally.max])).toEqual([
      [1, 8],
      [1, 46 - 18],
    ]);
  });

  it("is not passed on before that is over", () => {
    // The station is up again at 16: the head stands there until it is stuck, 18.
    const day = runChecked(planWith(10, { help: "stick there", crew: "stand-by" }));
    expect(passes(day, "bleed", "entry")).toEqual([18]);
    expect(day.crews[0]).toMatchObject({ jobSeconds: 3, busySeconds: 3 + 12 });
  });

  it("is stuck by its own station when that comes first, and nobody is called", () => {
    // Up again at 14, one second before the time is over.
    const day = runChecked(planWith(8, { help: "stick there" }));
    expect(passes(day, "stick", "start")).toEqual([14]);
    expect(day.stunned).toEqual({ stunnedAgain: 0, stuckThere: 0 });
  });

  it("does not need who was called and has not come", () => {
    // Nobody of the crew is there before 60; sticking is up again at 16.
    const plan = planWith(10, { help: "stick there", crew: "stand-by" }, [crew("stand-by", [0, 1])]);
    const shifts = [
      { name: "early", fromSeconds: 0, toSeconds: 60 },
      { name: "late", fromSeconds: 60, toSeconds: 600 },
    ];
    const day = runChecked({ ...plan, day: { ...plan.day, shifts } });
    expect(passes(day, "stick", "start")).toEqual([16]);
    expect(day.stunned!.stuckThere).toBe(0);
    expect(day.crews[0]!.jobSeconds).toBe(0);
  });
});
