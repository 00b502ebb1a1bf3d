import { describe, expect, it } from "vitest";
import type { Plan, Stage } from "../../../../../sim/asked/plan/plan.ts";
import type { DayRecord, KillStop, KillStopsRecord } from "../../../../../sim/day/engine/index.ts";
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
import { passes, runChecked } from "../../../../support/timeline.ts";
import { withDay } from "../../../../support/withDay.ts";

// Worked by hand, in seconds. A head comes every 5 s from 5 on; stunning takes 2 s, sticking 2 s, bleeding 20 s.

const stunning = station("stunning", 2, { buffer: Infinity });
const sticking = station("sticking", 2, { buffer: 5 });
const bleeding = dwell("bleeding", 20, 10);
const dressing = station("dressing", 1, { buffer: Infinity });

/** Breaks after so many seconds by the clock, again and again. */
const jam = (uptime: number, repair: number) => [breakdown(uptime, repair, { clock: "calendar" })];

function stopsOf(plan: Plan): KillStopsRecord {
  return recordOf(runChecked(plan, { killStops: true }));
}

function recordOf({ killStops }: DayRecord): KillStopsRecord {
  if (killStops === null) throw new Error("no record");
  return killStops;
}

function lineOf(stages: Stage[], changes: Partial<Plan> = {}, heads = 10, every = 5): Plan {
  return planOf(stream(constant(every), heads), stages, changes);
}

const brief = ({ fromSeconds, toSeconds, reasons }: KillStop) => [
  fromSeconds,
  toSeconds,
  ...reasons.map(({ cause, where, what }) => [cause, where, what].filter((word) => word !== "").join(": ")),
];

describe("a breakdown at sticking", () => {
  // It breaks at 20 and is repaired at 50. Heads 1 to 3 were stuck 7-9, 12-14, 17-19. Head n of the others is stunned
  // from 5 n to 5 n + 2; sticking has six places. From 50 on one head every 2 s is stuck.
  const plan = lineOf([stunning, { ...sticking, breakdowns: jam(20, 30) }, bleeding, dressing]);
  const record = stopsOf(plan);

  it("is a stop from when it breaks until it is repaired", () => {
    expect(record.stops.map(brief)[0]).toEqual([20, 50, "breakdown: sticking: jam"]);
    expect(record.stops[0]!.startedAgain).toBe(true);
  });

  it("tells the heads between stunning and sticking, and those that bleed", () => {
    // At 20 head 4 is not stunned yet, and heads 1 to 3 bleed: head 1 until 29. Head 9 is the sixth stunned, at 47.
    expect(record.stops[0]).toMatchObject({ stunned: 0, stunnedMost: 6, bleeding: 3, bleedingMost: 3, caught: 6 });
  });

  it("tells the longest wait of a stunned head until it is stuck, although that may be after the stop", () => {
    // Head n of 4 to 9 is stunned at 5 n + 2 and stuck at 50 + 2 (n - 4): waits 28, 25, 22, 19, 16, 13.
    expect(passes(runChecked(plan), "sticking", "start").slice(3, 9)).toEqual([50, 52, 54, 56, 58, 60]);
    expect(record.stops[0]).toMatchObject({ longestWaitSeconds: 28, neverStuck: 0 });
    expect(record).toMatchObject({ caught: 6, worstWaitSeconds: 28, neverStuck: 0 });
  });

  it("is over at the latest when the last head is through", () => {
    // It breaks again at 70; head 10 is stuck 62-64 and bleeds until 84. What breaks after that stops nothing.
    expect(record.stops.map(brief).slice(1)).toEqual([[70, 84, "breakdown: sticking: jam"]]);
    expect(record.stops[1]).toMatchObject({ stunned: 0, caught: 0, longestWaitSeconds: 0, startedAgain: false });
    expect(record).toMatchObject({ count: 2, seconds: 44, longestSeconds: 30, leftOut: 0 });
  });
});

describe("a stand of less than ten seconds", () => {
  it("is no stop and is counted apart", () => {
    // Sticking stands 20-29, 49-58 and from 78 on. Head 10, stunned at 52, is stuck 58-60 and bleeds until 80.
    const record = stopsOf(lineOf([stunning, { ...sticking, breakdowns: jam(20, 9) }, bleeding, dressing]));
    expect(record).toMatchObject({ count: 0, seconds: 0, longestSeconds: 0, stops: [], leastSeconds: 10 });
    expect(record.shorter).toEqual({ count: 3, seconds: 9 + 9 + 2 });
    expect(record).toMatchObject({ caught: 0, worstWaitSeconds: 0 });
  });
});

describe("full behind the kill line", () => {
  it("is a stop while no head can go on and nothing moves behind, and names the stage that holds it up", () => {
    // Dressing stands 40-70. Head 4 takes its place there at 44; head 5 has bled at 49 and finds none until 70. Stuck from
    // 5 n + 2 to 5 n + 24: at 49 heads 6 to 9 bleed, at 52 five of them.
    const record = stopsOf(lineOf([stunning, sticking, bleeding, station("dressing", 1, { breakdowns: jam(40, 30) })]));
    expect(record.stops.map(brief)).toEqual([[49, 70, "full behind: dressing: jam"]]);
    // Head 10 is stuck at the instant at which it is stunned: it was not caught.
    expect(record.stops[0]).toMatchObject({ stunned: 0, bleeding: 4, bleedingMost: 5, caught: 0, startedAgain: true });
  });

  it("is no stop while what is behind works at its own pace", () => {
    // Dressing takes 12 s a head, so bleeding is never empty of heads whose time is up.
    const record = stopsOf(lineOf([stunning, sticking, bleeding, station("dressing", 12)]));
    expect(record).toMatchObject({ count: 0, shorter: { count: 0, seconds: 0 } });
  });
});

describe("a planned break", () => {
  const crews = [crew("kill", 2)];
  const manned = [
    manual("stunning", 2, "kill", { buffer: Infinity }),
    manual("sticking", 2, "kill", { buffer: 5 }),
    bleeding,
    dressing,
  ];
  const tea = (safeStop: Plan["day"]["safeStop"]) =>
    withDay(lineOf(manned, { crews }), { safeStop, breaks: [pause("tea", 21, 60, { crews: ["kill"] })] });

  it("behind a protected stretch begins when the last head has bled, with no head there", () => {
    // Head 4 is stunned 20-22, stuck 22-24 and bleeds until 44; the break lasts 44-104.
    const record = stopsOf(tea({ from: "stunning", to: "bleeding" }));
    expect(record.stops.map(brief)).toEqual([[44, 104, "planned break: stunning", "planned break: sticking"]]);
    expect(record.stops[0]).toMatchObject({ stunned: 0, stunnedMost: 0, bleeding: 0, bleedingMost: 0, caught: 0 });
  });

  it("without one leaves a stunned head that waits for its end", () => {
    // The sticker goes at 21; head 4 is stunned at 22, when the stunner goes too. The sticker is back at 81.
    const record = stopsOf(tea(null));
    expect(record.stops.map(brief)).toEqual([[21, 81, "planned break: sticking", "planned break: stunning"]]);
    expect(record.stops[0]).toMatchObject({ stunned: 0, stunnedMost: 1, caught: 1, longestWaitSeconds: 81 - 22 });
  });
});

describe("nobody there", () => {
  const oneCrew = { crews: [crew("c", 1)] };

  it("is a stop while the people of a step are at work elsewhere", () => {
    // Heads at 28 and 56. Head 1 has bled at 52 and is dressed until 72; head 2 is stunned at 58 and stuck at 72.
    const stages = [stunning, manual("sticking", 2, "c", { buffer: 5 }), bleeding, manual("dressing", 20, "c")];
    const record = stopsOf(lineOf(stages, oneCrew, 2, 28));
    expect(record.stops.map(brief)).toEqual([[58, 72, "nobody there: sticking"]]);
    expect(record.stops[0]).toMatchObject({ stunned: 1, stunnedMost: 1, caught: 1, longestWaitSeconds: 14 });
  });

  it("is none while they are at work at another step of the kill line", () => {
    // One person stuns and sticks; a head every 3 s is more than he can do, so one always waits for him.
    const kill = [manual("stunning", 2, "c", { buffer: Infinity }), manual("sticking", 2, "c"), bleeding, dressing];
    expect(stopsOf(lineOf(kill, oneCrew, 10, 3))).toMatchObject({ count: 0, shorter: { count: 0 } });
  });
});

describe("a full vessel", () => {
  it("is a stop of the step that feeds it", () => {
    // 0.1 kg of blood a head: the third one fills the vessel at 19; emptying takes 30 s. Head 4 waits at sticking from 22.
    const blood = [{ name: "blood", share: 0.04, of: "live weight" as const, vessel: "tank" }];
    const tank = { name: "tank", capacityKg: 0.25, emptyAtKg: 0.25, emptyingSeconds: 30, crew: null };
    const stages = [stunning, { ...sticking, byProducts: blood }, bleeding, dressing];
    const record = stopsOf(lineOf(stages, { vessels: [{ ...tank, whenFull: "stop" }] }, 5));
    expect(record.stops.map(brief)).toEqual([[22, 49, "full vessel: sticking: tank"]]);
    expect(record.stops[0]).toMatchObject({ stunned: 1, stunnedMost: 2, longestWaitSeconds: 27 });
  });
});

describe("a chain", () => {
  const overhead = (stations: Parameters<typeof chain>[3]) => [
    stunning,
    chain("bleeding chain", 12, 2, stations),
    dressing,
  ];

  it("that stands for a breakdown at a station on it is a stop", () => {
    // Sticking on it stands 21-51 and 72-102. Head 4, stunned at 22, hangs at the loading point; head 5, stunned at 27,
    // waits for a shackle. The step under way has 1 s left: at 52 head 4 comes to sticking and head 5 is hung, at 54 head 5.
    const record = stopsOf(lineOf(overhead([onChain("sticking", 1, 2, 2, { breakdowns: jam(21, 30) })]), {}, 5));
    expect(record.stops.map(brief)).toEqual([
      [21, 51, "breakdown: sticking: jam"],
      [72, 102, "breakdown: sticking: jam"],
    ]);
    expect(record.stops[0]).toMatchObject({ stunned: 0, stunnedMost: 2, caught: 2, longestWaitSeconds: 30 });
    expect(record.stops[1]).toMatchObject({ stunned: 0, caught: 0, bleedingMost: 2 });
    expect(record).toMatchObject({ seconds: 60, steps: ["stunning", "bleeding chain"], bleeding: ["bleeding chain"] });
  });

  it("that stands for a head that is not finished is a stop too", () => {
    // Hung at 7, in the window from 8 on: 14 s of work until 22. The step that is due at 12 waits for it.
    const record = stopsOf(lineOf(overhead([onChain("sticking", 1, 2, 14)]), {}, 1));
    expect(record.stops.map(brief)).toEqual([
      [12, 22, "chain stands: bleeding chain: a head is not finished at sticking"],
    ]);
  });
});

describe("a head that is never stuck", () => {
  it("is told of the stop that caught it, with how long it waited until it was gone", () => {
    // The day is cut off at 45 while sticking stands since 20: heads 4 to 8, the first of them stunned at 22.
    const plan = lineOf([stunning, { ...sticking, breakdowns: jam(20, 1000) }, bleeding, dressing]);
    const record = stopsOf(withDay(plan, { ceilingSeconds: 45 }));
    expect(record.stops.map(brief)).toEqual([[20, 45, "breakdown: sticking: jam"]]);
    expect(record.stops[0]).toMatchObject({ caught: 5, neverStuck: 5, longestWaitSeconds: 23, startedAgain: false });
    expect(record).toMatchObject({ caught: 5, neverStuck: 5, worstWaitSeconds: 23 });
  });
});

describe("a day with very many stops", () => {
  it("lists the first 200 and counts the others", () => {
    // 15 s up and 12 s down, again and again: the n-th stop is from 27 n - 12 to 27 n. 1 200 heads come until 6000.
    const record = stopsOf(lineOf([stunning, { ...sticking, breakdowns: jam(15, 12) }, bleeding, dressing], {}, 1200));
    expect(record.stops).toHaveLength(200);
    expect(brief(record.stops[199]!).slice(0, 2)).toEqual([27 * 200 - 12, 27 * 200]);
    expect(record.leftOut).toBe(record.count - 200);
    // The last head has bled at about 6024 s, in or after the 223rd stop, which ends at 6021.
    expect(record.count).toBe(223);
    expect(record.seconds).toBe(223 * 12);
    expect(record.caught).toBeGreaterThan(record.stops.reduce((sum, { caught }) => sum + caught, 0));
  });
});

describe("a line without stunning", () => {
  it("has no record", () => {
    const day = runChecked(lineOf([station("skinning", 2), dressing]), { killStops: true });
    expect(day.killStops).toBeNull();
  });
});
