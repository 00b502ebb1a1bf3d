import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DayPlan, Plan, Stage } from "../../../../sim/asked/plan/plan.ts";
import { advance, type DayRecord, type DayState, runDay, startDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
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
} from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

// Stunning takes 2 s, bleeding 10 s; a head comes every 3 s from 3 on. Head 4 is stunned 12-14 and bleeds until 24: a stop
// that is due at 13 finds heads 1 to 4 on the stretch, of which head 4 is the last to be through.

const line: Stage[] = [
  manual("stun", 2, "kill", { buffer: Infinity }),
  dwell("bleed", 10, 20),
  manual("pack", 1, "pack", { buffer: Infinity }),
];
const crews = [crew("kill", [1, 1]), crew("pack", [1, 1])];
const ONE_SHIFT = [{ name: "day", fromSeconds: 0, toSeconds: 3600 }];

function killing(day: Partial<DayPlan>, stages = line, heads = 10): DayRecord {
  const safeStop = { from: "stun", to: "bleed" };
  return runChecked(withDay(planOf(stream(constant(3), heads), stages, { crews }), { safeStop, ...day }));
}

describe("a break that is due while heads are on the protected stretch", () => {
  const day = killing({ shifts: ONE_SHIFT, breaks: [pause("tea", 13, 20, { crews: ["kill", "pack"] })] });

  it("begins when the last of them is through, and no other head begins the stretch meanwhile", () => {
    // Heads 5 and on come from 15 on and wait. The break lasts 24-44; then one head every 2 s until none waits.
    expect(passes(day, "stun", "start")).toEqual([3, 6, 9, 12, 44, 46, 48, 50, 52, 54]);
    expect(passes(day, "bleed", "exit").slice(0, 5)).toEqual([15, 18, 21, 24, 56]);
  });

  it("lasts its full length", () => {
    // Present 0-24 and 44-67 (head 10 is packed 66-67).
    expect(day.finishSeconds).toBe(67);
    expect(day.crews[0]).toMatchObject({ name: "kill", busySeconds: 20, presentSeconds: 24 + 23 });
  });

  it("does not hold back the crews that work elsewhere", () => {
    // Packers are away 13-33 to the second: heads 1 to 4 are packed from 33 on.
    expect(passes(day, "pack", "start").slice(0, 4)).toEqual([33, 34, 35, 36]);
    expect(day.crews[1]).toMatchObject({ name: "pack", busySeconds: 10, presentSeconds: 13 + 34 });
  });

  it("shows the held stage as blocked until the people go, then as on break", () => {
    // Head 5 waits from 15: blocked 15-24, on break 24-44. Work 4 x 2 before, 6 x 2 after; the rest is waiting for heads.
    expect(secondsIn(day, "stun")).toEqual({ working: 20, blocked: 9, "on break": 20, starved: 18 });
  });
});

describe("a break that finds the stretch empty", () => {
  it("begins on time", () => {
    // Heads at 20, 40, 60: head 1 is through at 32; the crew is away 35-55; head 2 begins at 55.
    const plan = withDay(planOf(stream(constant(20), 3), line, { crews }), {
      shifts: ONE_SHIFT,
      safeStop: { from: "stun", to: "bleed" },
      breaks: [pause("tea", 35, 20, { crews: ["kill"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "stun", "start")).toEqual([20, 55, 60]);
    expect(day.crews[0]!.presentSeconds).toBe(day.finishSeconds - 20);
  });

  it("at the very second at which the last head is through finds it empty", () => {
    // Head 1 is through at 15; the only break is due at 15 and head 2 comes long after.
    const plan = withDay(planOf(stream(constant(3), 1), line, { crews }), {
      shifts: ONE_SHIFT,
      safeStop: { from: "stun", to: "bleed" },
      breaks: [pause("tea", 15, 20, { crews: ["kill"] })],
    });
    expect(runChecked(plan).crews[0]!.presentSeconds).toBe(15);
  });
});

describe("other planned stops", () => {
  it("the end of a shift waits too, and the next shift begins on time", () => {
    // Shift to 13, next from 200: the crew stays until 24 and begins head 5 at 200.
    const shifts = [
      { name: "early", fromSeconds: 0, toSeconds: 13 },
      { name: "late", fromSeconds: 200, toSeconds: 3600 },
    ];
    const day = killing({ shifts });
    expect(passes(day, "stun", "start").slice(3, 6)).toEqual([12, 200, 202]);
    expect(day.crews[0]!.presentSeconds).toBe(24 + day.finishSeconds - 200);
    expect(day.crews[1]!.presentSeconds).toBe(13 + day.finishSeconds - 200);
  });

  it("a machine's pause waits until no head is on the stretch", () => {
    const machine = [station("stun", 2, { buffer: Infinity }), ...line.slice(1)];
    const day = killing({ shifts: ONE_SHIFT, breaks: [pause("cleaning", 13, 20, { stages: ["stun"] })] }, machine);
    expect(passes(day, "stun", "start").slice(3, 6)).toEqual([12, 44, 46]);
    expect(secondsIn(day, "stun")).toMatchObject({ blocked: 9, "on break": 20 });
  });

  it("a pause of a machine after the stretch does not", () => {
    const machine = [...line.slice(0, 2), station("pack", 1, { buffer: Infinity })];
    const day = killing({ shifts: ONE_SHIFT, breaks: [pause("cleaning", 13, 20, { stages: ["pack"] })] }, machine);
    expect(passes(day, "stun", "start").slice(3, 6)).toEqual([12, 15, 18]);
    expect(passes(day, "pack", "start")[0]).toBe(33);
  });

  it("a chain on the stretch pauses when it is empty", () => {
    // Heads every 5 s, stun 2 s, a chain of 4 places and 3 s with its sticker at place 1 (2 s). The pause is due at 31: head
    // 6 is stunned 30-32, hung at 32, stuck 33-35. The chain stands 35-55 and head 7 is stunned at 55.
    const stages = [
      station("stun", 2, { buffer: Infinity }),
      chain("c", 4, 3, [onChain("stick", 1, 1, 2)]),
      station("last", 1, { buffer: Infinity }),
    ];
    const plan = withDay(planOf(stream(constant(5), 8), stages), {
      safeStop: { from: "stun", to: "stick" },
      breaks: [pause("cleaning", 31, 20, { stages: ["c"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "stun", "start").slice(4, 8)).toEqual([25, 30, 55, 57]);
    expect(passes(day, "stick", "end").slice(4, 6)).toEqual([32, 35]);
    expect(day.chains[0]!.standSeconds.pause).toBe(20);
  });
});

describe("two crews on the stretch", () => {
  const stages: Stage[] = [
    manual("stun", 2, "kill", { buffer: Infinity }),
    dwell("bleed", 10, 20),
    manual("stick", 1, "pack", { buffer: Infinity }),
  ];
  const withBreaks = (later: number) =>
    runChecked(
      withDay(planOf(stream(constant(3), 6), stages, { crews }), {
        shifts: ONE_SHIFT,
        safeStop: { from: "stun", to: "stick" },
        breaks: [pause("tea", 13, 20, { crews: ["kill", "pack"], laterSeconds: { pack: later } })],
      }),
    );

  it("both stay until the last head is through, also when one of the breaks is due a little later", () => {
    // Head 4 is through the last stage at 25; both are away 25-45.
    const day = withBreaks(5);
    expect(passes(day, "stick", "end").slice(0, 4)).toEqual([16, 19, 22, 25]);
    expect(passes(day, "stun", "start").slice(4)).toEqual([45, 47]);
    expect(day.crews.map((each) => each.presentSeconds)).toEqual(Array(2).fill(day.finishSeconds - 20));
  });

  it("no head begins before the later one is back", () => {
    // The second crew's break is due at 40, when the stretch is empty: 40-60.
    const day = withBreaks(27);
    expect(passes(day, "stun", "start").slice(4)).toEqual([60, 62]);
  });
});

describe("over random plans", () => {
  it("no station on the stretch has all its people away, and no machine there pauses, while a head is on it", () => {
    let awayWithStretch = 0;
    fc.assert(
      fc.property(randomPlan, fc.nat(), (plan, replication) => {
        if (plan.day.safeStop === null) return;
        const options = { seed: "safe stops", replication, perHead: true };
        const away = awayTimes(plan, startDay(compileLine(plan), options));
        const inside = timesInside(runDay(compileLine(plan), options));
        awayWithStretch += away.length;
        for (const stop of away) {
          const caught = inside.filter((head) => head.from < stop.to && head.to > stop.from);
          expect(caught, `away ${stop.from} to ${stop.to}`).toEqual([]);
        }
      }),
      { seed: 2026, numRuns: 400 },
    );
    expect(awayWithStretch).toBeGreaterThan(100);
  });
});

interface Time {
  from: number;
  to: number;
}

/** Takes the day one instant at a time and notes when a station of the stretch (every stage but trim) has nobody or pauses. */
function awayTimes(plan: Plan, day: DayState): Time[] {
  const stages = plan.line.filter((stage) => !stage.offLine);
  const staffed = stages.flatMap(crewsOf).filter((crews) => crews.length > 0);
  const times: Time[] = [];
  let since: number | null = null;
  for (let status = "running"; status === "running" && day.now < plan.day.ceilingSeconds; ) {
    status = advance(day, Math.min(day.calendar.times[day.calendar.next()]!, plan.day.ceilingSeconds));
    const onBreak = new Set(
      plan.crews.flatMap((each, index) => {
        const { away, owing, people } = day.crewAt[index]!;
        return away + owing > 0 && away + owing >= people ? [each.name] : [];
      }),
    );
    const crewAway = staffed.some((crews) => crews.every((name) => onBreak.has(name)));
    const paused = stages.some(({ name }) => day.stageAt[day.line.stages.names.indexOf(name)]!.pauses > 0);
    const isAway = crewAway || paused;
    if (isAway && since === null) since = day.now;
    if (!isAway && since !== null) times.push({ from: since, to: day.now });
    if (!isAway) since = null;
  }
  return since === null ? times : [...times, { from: since, to: day.now }];
}

/** By station: the crews that may work there. */
function crewsOf(stage: Stage): string[][] {
  if (stage.kind === "dwell") return [];
  return stage.kind === "chain" ? stage.stations.map((each) => each.crews) : [stage.crews];
}

/** By head: from the start of the first stage to the end of the last one, or to leaving the line before it. */
function timesInside(day: DayRecord): Time[] {
  const starts = passes(day, "s0", "start");
  const through = passes(day, "last", "end");
  const moments = day.perHead!.times.length / Math.max(1, day.perHead!.heads);
  return starts.flatMap((from, head): Time[] => {
    if (Number.isNaN(from)) return [];
    const all = day.perHead!.times.slice(head * moments, (head + 1) * moments).filter((time) => !Number.isNaN(time));
    const left = day.perHead!.destinations[head]! >= 0 ? Math.max(...all) : Infinity;
    return [{ from, to: Number.isNaN(through[head]) ? left : through[head]! }];
  });
}
