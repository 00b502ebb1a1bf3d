import { describe, expect, it } from "vitest";
import type { Plan, Stage, Stunned } from "../../../../../sim/asked/plan/plan.ts";
import type { DayRecord } from "../../../../../sim/day/engine/index.ts";
import { breakdown } from "../../../../support/breakdowns.ts";
import {
  chain,
  constant,
  crew,
  dwell,
  manual,
  onChain,
  pause,
  planOf,
  station,
  stream,
} from "../../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../../support/timeline.ts";
import { withDay } from "../../../../support/withDay.ts";

// Worked by hand, in seconds. Everywhere heads wait before "stun", which takes 2 s, for as long as they must.

const HOLD: Stunned = { from: "stun", to: "stick", hold: true, late: null };
const stun = station("stun", 2, { buffer: Infinity });
const last = station("last", 0.5, { buffer: Infinity });

function planWith(every: number, heads: number, line: Stage[], changes: Partial<Plan> = {}): Plan {
  return planOf(stream(constant(every), heads), line, { stunned: HOLD, ...changes });
}

/** Seconds from the end of stunning to the start of sticking, head by head. */
function waits(day: DayRecord): number[] {
  const stuck = passes(day, "stick", "start");
  return passes(day, "stun", "end").map((end, head) => stuck[head]! - end);
}

describe("the hold on a plain line", () => {
  // Sticking takes 3 s, bleeding 10 s at 2 places. Heads come every second from 1 on.
  // Head 1: stunned 1-3, stuck 3-6, bleeds 6-16. Head 2: the sticker is free at 6, so it is stunned 4-6 and bleeds 9-19.
  // Heads 1 and 2 have both places: head 3 waits for head 1 to leave (16), head 4 for head 2 (19), head 5 for head 3 (31).
  const line = [stun, station("stick", 3), dwell("bleed", 10, 2), last];

  it("stuns a head when sticking is free for it in time and it has a place to bleed", () => {
    const day = runChecked(planWith(1, 5, line));
    expect(passes(day, "stun", "start")).toEqual([1, 4, 16, 19, 31]);
    expect(passes(day, "stick", "start")).toEqual([3, 6, 18, 21, 33]);
    expect(waits(day)).toEqual([0, 0, 0, 0, 0]);
  });

  it("is told as heads held back", () => {
    // Held 3-4, 6-16, 18-19, 21-31; head 1 is off the line's stunner at 3 and so on: 2 s of work each.
    const day = runChecked(planWith(1, 5, line));
    expect(secondsIn(day, "stun")).toMatchObject({ working: 10, blocked: 1 + 10 + 1 + 10 });
    expect(day.stages[0]!.heldSeconds).toBe(22);
  });

  it("keeps a head from waiting that would wait without it", () => {
    // Head 4 is stunned 9-11 while the sticker, done with head 3 at 12, waits for a place to bleed until 16.
    expect(waits(runChecked(planWith(1, 5, line, { stunned: null })))).toEqual([0, 1, 1, 5, 1]);
  });

  it("does not begin a head that the sticking station cannot begin: a gate, a full vessel, a machine that is down", () => {
    // One head between sticking and the end of bleeding: head 2 is stunned 16-18, when head 1 is through.
    const gate = { name: "one", from: "stick", to: { stage: "bleed", moment: "end" } as const, atMost: 1 };
    expect(passes(runChecked(planWith(1, 2, line, { gates: [gate] })), "stun", "start")).toEqual([1, 16]);
    // Down from 2 to 12: head 1 is under way; head 2 has to wait for head 1 to be stuck, 12-15, and is stunned 13-15.
    const breaks = breakdown(2, 10, { clock: "calendar" });
    const down = [stun, station("stick", 3, { breakdowns: [breaks] }), dwell("bleed", 10, 20), last];
    expect(passes(runChecked(planWith(1, 2, down)), "stun", "start")).toEqual([1, 13]);
  });

  it("looks at a vessel that would be full before the head is stuck", () => {
    // Each head gives 0.25 kg of blood, 10 % of 2.5 kg; the tank stops sticking at 0.5 kg and takes 20 s to empty. Head 2
    // fills it when it is stuck, at 9: head 3 could not be stuck then, and is stunned when the tank is empty, at 29.
    const blood = { name: "blood", share: 0.1, of: "live weight", vessel: "tank" } as const;
    const vessels = [
      { name: "tank", capacityKg: 0.5, emptyAtKg: 0.5, emptyingSeconds: 20, crew: null, whenFull: "stop" } as const,
    ];
    const bled = [stun, station("stick", 3, { byProducts: [blood] }), dwell("bleed", 1, 20), last];
    expect(passes(runChecked(planWith(1, 3, bled, { vessels })), "stun", "start")).toEqual([1, 4, 29]);
  });
});

describe("the hold before a chain that may stand", () => {
  // Sticking takes 2 s; the bleeding chain has 4 places and a step every 2 s, at 2, 4, 6, ... Heads come every 4 s.
  const line = (parts: Parameters<typeof chain>[3] = []) => [stun, station("stick", 2), chain("c", 4, 2, parts), last];

  it("stuns no head while the chain stands for a breakdown", () => {
    // The chain stands 11-31 and makes its next step at 32. Head 2, stunned 8-10 and stuck 10-12, hangs at the loading
    // point. Head 3 comes at 12 and is stunned at 31, when the chain goes on; head 4 when the stunner is free, at 33.
    const jam = breakdown(11, 20, { clock: "calendar" });
    const watch = onChain("watch", 1, 1, 0.5, { breakdowns: [jam] });
    const day = runChecked(planWith(4, 4, line([watch])));
    expect(passes(day, "stun", "start")).toEqual([4, 8, 31, 33]);
    expect(waits(day)).toEqual([0, 0, 0, 0]);
    // Without it head 3 is stuck 14-16 and waits for a shackle, and head 4, stunned 16-18, is stuck at 32.
    expect(waits(runChecked(planWith(4, 4, line([watch]), { stunned: null })))).toEqual([0, 0, 0, 14]);
  });

  it("stuns no head that a planned stop of the chain would catch before it bleeds", () => {
    // The chain pauses 13-33. Head 2 hangs at 12. Head 3 comes at 12, would be hung at 16, and is stunned at 33.
    const plan = withDay(planWith(4, 4, line()), { breaks: [pause("cleaning", 13, 20, { stages: ["c"] })] });
    const day = runChecked(plan);
    expect(passes(day, "stun", "start")).toEqual([4, 8, 33, 35]);
    expect(waits(day)).toEqual([0, 0, 0, 0]);
  });

  it("stuns no head that the chain would not take because there is no place at its end", () => {
    // Behind the chain a machine without places works 30 s: head 1, hung at 8, is taken off at 16 and is done at 46; head 2,
    // hung at 12, is due at 20 and stands until 46. At 12 no head has come so far that it would stop the chain before head
    // 3 is hung, at 16. Head 4 comes at 16: it would be hung at 20, and at 46 head 3 is two steps from the end, where head
    // 2 is worked on until 76.
    const slow = [stun, station("stick", 2), chain("c", 4, 2, []), station("slow", 30), last];
    expect(passes(runChecked(planWith(4, 4, slow)), "stun", "start")).toEqual([4, 8, 12, 76]);
  });

  it("reckons the ride to a sticker on the chain", () => {
    // Stuck at the second shackle: a head that comes at 5 is stunned 5-7, hung, moved at 8 and 10. A pause from 9 to 29
    // would catch it on its way: it is stunned at 29, hung at 31, moved at 32 and 34.
    const stages = [stun, chain("c", 8, 2, [onChain("stick", 2, 1, 1)]), last];
    const free = runChecked(planWith(5, 1, stages));
    expect([passes(free, "stun", "start"), passes(free, "stick", "start")]).toEqual([[5], [10]]);
    const plan = withDay(planWith(5, 1, stages), { breaks: [pause("cleaning", 9, 20, { stages: ["c"] })] });
    const held = runChecked(plan);
    expect([passes(held, "stun", "start"), passes(held, "stick", "start")]).toEqual([[29], [34]]);
  });

  it("lets a stunner who works on the same chain begin while the chain stands for that head", () => {
    // Both on one chain, the stunner with one shackle that it stops the chain for: 2 s of work between steps 3 s apart, then
    // the sticker two shackles on. Head 1, hung at 4, is stunned from 6 on, stuck from 12 on.
    const stages = [
      station("hang", 1, { buffer: Infinity }),
      chain("c", 8, 3, [onChain("stun", 1, 1, 4), onChain("stick", 3, 1, 1)]),
      last,
    ];
    const day = runChecked(planWith(3, 3, stages));
    expect(day.status).toBe("finished");
    // The step that is due at 9 waits for the end of stunning, 10; then every 4 s, as long as a head is stunned there.
    expect(passes(day, "stun", "start")).toEqual([6, 10, 14]);
    expect(passes(day, "stick", "start")).toEqual([14, 18, 21]);
  });
});

describe("the hold before sticking by people", () => {
  const line = [stun, manual("stick", 2, "kill"), dwell("bleed", 5, 20), last];
  const tea = (at: number, changes: Partial<Plan> = {}) =>
    withDay(planWith(3, 3, line, { crews: [crew("kill", 1)], ...changes }), {
      breaks: [pause("tea", at, 20, { crews: ["kill"] })],
    });

  it("stuns no head while the sticker is on a break", () => {
    // Heads at 3, 6 and 9. Head 2 is stunned 6-8 and stuck 8-10; the break is due at 9 and lasts 10-30 for the one sticker.
    const day = runChecked(tea(9));
    expect(passes(day, "stun", "start")).toEqual([3, 6, 30]);
    expect(waits(day)).toEqual([0, 0, 0]);
  });

  it("stuns no head whose sticker will have gone on a break by then", () => {
    // The break begins at 8, the very second at which head 2 would come to the sticker.
    expect(passes(runChecked(tea(8)), "stun", "start")).toEqual([3, 28, 30]);
    expect(waits(runChecked(tea(8, { stunned: null })))).toEqual([0, 20, 19]);
  });

  it("counts on a break that a safe stop holds back until the head is through", () => {
    const plan = withDay(tea(8), { safeStop: { from: "stun", to: "stick" } });
    // Head 2 is on the stretch at 8: the break begins when it is stuck, 10-30. Head 3 comes at 9 and is stunned at 30.
    expect(passes(runChecked(plan), "stun", "start")).toEqual([3, 6, 30]);
  });

  it("sees that one person cannot stun and stick at once", () => {
    // One person for both: head 2 comes at 6 while head 1, stunned 3-5, is stuck 5-7; then stun 7-9, stick 9-11, and so on.
    const both = [manual("stun", 2, "kill", { buffer: Infinity }), ...line.slice(1)];
    const day = runChecked(planWith(3, 3, both, { crews: [crew("kill", 1, { rule: "longest queue" })] }));
    expect(passes(day, "stun", "start")).toEqual([3, 7, 11]);
    expect(waits(day)).toEqual([0, 0, 0]);
  });
});
