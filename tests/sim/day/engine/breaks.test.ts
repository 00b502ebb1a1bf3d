import { describe, expect, it } from "vitest";
import { breakdown } from "../../../support/breakdowns.ts";
import { constant, crew, manual, pause, planOf, saturated, station, stream } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

// Every timeline below is worked by hand: the comment gives the way of thinking, the numbers are seconds.

describe("a break", () => {
  // Two positions, two people, heads without end. One takes 40 s a head from 0 on; the other one's first comes at the same
  // time: both 0-40, 40-80, 80-120. The break of 60 s is due at 100.
  const crews = [crew("crew", 2)];
  const line = [manual("a", 40, "crew", { positions: 2 })];
  const plan = (ends: "after its length" | "at its time") =>
    withDay(planOf(saturated(8), line, { crews }), { breaks: [pause("tea", 100, 60, { crews: ["crew"], ends })] });

  it("has its length: who leaves late comes back late", () => {
    // Away 120-180, work 180-220: the break is over at 160 by the clock.
    const day = runChecked(plan("after its length"));
    expect(passes(day, "a", "start").slice(0, 8)).toEqual([0, 0, 40, 40, 80, 80, 180, 180]);
    expect(secondsIn(day, "a")).toEqual({ working: 2 * 160, "on break": 2 * 60 });
    // Two people 0-120 and 180-220.
    expect(day.crews[0]).toMatchObject({ busySeconds: 320, presentSeconds: 320 });
  });

  it("ends at its time where the plan says so", () => {
    const day = runChecked(plan("at its time"));
    expect(passes(day, "a", "start").slice(0, 8)).toEqual([0, 0, 40, 40, 80, 80, 160, 160]);
    expect(secondsIn(day, "a")).toEqual({ working: 2 * 160, "on break": 2 * 40 });
  });

  it("is everybody's own: people leave singly and come back singly", () => {
    // One person free at 20 when it begins, one with a head of 1 ... 31 in hand: away 20-40 and 31-51. The head of 2 is
    // taken in hand at 2 and done at 32 by a third: 32-52. Heads at 1, 2, 3, 4 with 30 s each: three people for 1 to 3.
    const three = withDay(
      planOf(stream(constant(1), 5), [manual("a", 30, "crew", { positions: 5, buffer: Infinity })], {
        crews: [crew("crew", 3)],
      }),
      { breaks: [pause("tea", 20, 20, { crews: ["crew"] })] },
    );
    const day = runChecked(three);
    // Heads 1 to 3 at 1, 2, 3, done at 31, 32, 33; people are back at 51, 52, 53; heads 4 and 5 begin at 51 and 52.
    expect(passes(day, "a", "start")).toEqual([1, 2, 3, 51, 52]);
    // Idle with work waiting: two positions from 5 to 20, one more head from 4; nobody may begin from 20 to 51; 51-52 one head.
    expect(secondsIn(day, "a")).toMatchObject({ "no crew": 1 + 2 * 15 + 1 });
    expect(day.crews[0]!.presentSeconds).toBe(31 + 32 + 33 + (82 - 51) + (82 - 52) + (82 - 53));
  });

  it("that ends at its time is over for who is still at work then", () => {
    // A head from 0 to 200 and a break 100-160: nobody goes.
    const long = withDay(planOf(saturated(2), [manual("a", 200, "crew")], { crews: [crew("crew", 1)] }), {
      breaks: [pause("tea", 100, 60, { crews: ["crew"], ends: "at its time" })],
    });
    expect(passes(runChecked(long), "a", "start").slice(0, 2)).toEqual([0, 200]);
  });

  it("follows the one before for whoever is still away", () => {
    // Head 0-50; the first break is due at 10 (20 s): away 50-70; the second begins at 60 (30 s): back at 100.
    const two = withDay(planOf(saturated(2), [manual("a", 50, "crew")], { crews: [crew("crew", 1)] }), {
      breaks: [pause("tea", 10, 20, { crews: ["crew"] }), pause("lunch", 60, 30, { crews: ["crew"] })],
    });
    expect(passes(runChecked(two), "a", "start").slice(0, 2)).toEqual([0, 100]);
  });

  it("is owed after work that two of them interrupt", () => {
    // Head 0-50; breaks due at 10 (20 s) and at 40 (5 s): both from 50 on, back at 75.
    const two = withDay(planOf(saturated(2), [manual("a", 50, "crew")], { crews: [crew("crew", 1)] }), {
      breaks: [pause("tea", 10, 20, { crews: ["crew"] }), pause("coffee", 40, 5, { crews: ["crew"] })],
    });
    expect(passes(runChecked(two), "a", "start").slice(0, 2)).toEqual([0, 75]);
  });

  it("is nobody's any more when the shift is over", () => {
    // Shifts 0-40 and 60-200; the break is due at 30 (50 s) with a head of 0 ... 45 in hand: the shift is over by then, and
    // the next one begins at 60.
    const shifts = [
      { name: "early", fromSeconds: 0, toSeconds: 40 },
      { name: "late", fromSeconds: 60, toSeconds: 200 },
    ];
    const plan = planOf(saturated(2), [manual("a", 45, "crew")], { crews: [crew("crew", [1, 1])] });
    const day = runChecked(withDay(plan, { shifts, breaks: [pause("tea", 30, 50, { crews: ["crew"] })] }));
    expect(passes(day, "a", "start").slice(0, 2)).toEqual([0, 60]);
  });

  it("waits for the end of a repair, too, and the next job for the end of the break", () => {
    // Down at 6, mended 6-16 by the one repairer, whose break of 20 s is due at 10: away 16-36. The machine works 2 s more for
    // its first head, 16-18; down again after 6 s of work, at 22; mended from 36 to 46.
    const line = [station("a", 4, { breakdowns: [breakdown(6, 10, { crew: "maintenance" })] })];
    const plan = withDay(planOf(saturated(4), line, { crews: [crew("maintenance", 1)] }), {
      breaks: [pause("tea", 10, 20, { crews: ["maintenance"] })],
    });
    // Heads: 0-4; 4-6 and 16-18; 18-22; the next one begins at 22, just when the machine is down: 46-50.
    expect(passes(runChecked(plan), "a", "end").slice(0, 4)).toEqual([4, 18, 22, 50]);
  });
});

describe("a blocked position that fails", () => {
  it("counts as down until it is repaired, then as blocked again", () => {
    // a 0-2, head 1 to b 2-30. Head 2: a 2-4, blocked until 30; down 10-15 by the calendar.
    const line = [station("a", 2, { breakdowns: [breakdown(10, 5, { clock: "calendar" })] }), station("b", 28)];
    const day = runChecked(planOf(saturated(1), line));
    expect(secondsIn(day, "a")).toEqual({ working: 4, blocked: 26 - 5 - 5, down: 5 + 5 });
  });
});
