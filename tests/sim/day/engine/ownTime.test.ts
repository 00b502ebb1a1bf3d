import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/plan.ts";
import { type DayRecord, runDay, STATES, type State } from "../../../../sim/day/engine/index.ts";
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
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

const CHILLER = dwell("chilling", 1000, Infinity);

/** From, to, and position-seconds by state with zeros left out. */
function own(day: DayRecord, stage: string): [number, number, Partial<Record<State, number>>] | null {
  const { ownTime } = day.stages.find(({ name }) => name === stage)!;
  if (ownTime === null) return null;
  const seconds = STATES.flatMap((state, index) => {
    const value = ownTime.stateSeconds[index]!;
    return value === 0 ? [] : [[state, value]];
  });
  return [ownTime.fromSeconds, ownTime.toSeconds, Object.fromEntries(seconds)];
}

describe("a station's own time", () => {
  it("begins with its first head and ends with its last: waiting before, and while the chiller empties, is no starving", () => {
    // Heads at 100, 200, 300; a 20 s each, b 30 s each, chilling until 1350.
    const day = runChecked(planOf(stream(constant(100), 3), [station("a", 20), station("b", 30), CHILLER]));
    expect(day.finishSeconds).toBe(1350);
    expect(own(day, "a")).toEqual([100, 320, { working: 60, starved: 160 }]);
    expect(own(day, "b")).toEqual([120, 350, { working: 90, starved: 140 }]);
    expect(own(day, "chilling")).toEqual([150, 1350, { working: 3000 }]);
  });

  it("counts a hole in the middle of the day as starving: the heads stop coming and come again", () => {
    // The first station's machine is under repair from 30 (its third head in hand) to 530: the second one starves meanwhile.
    const jam = {
      name: "jam",
      clock: "running" as const,
      scope: "position" as const,
      uptimeSeconds: constant(25),
      repairSeconds: constant(500),
      crew: null,
      headInHand: "resume" as const,
    };
    const day = runChecked(
      planOf(stream(constant(10), 4), [station("a", 10, { breakdowns: [jam] }), station("b", 10), CHILLER]),
    );
    // a: 10-20, 20-30, 30-35 down 535-540, 540-550. b: 20-30, 30-40, 540-550, 550-560.
    expect(own(day, "a")).toEqual([10, 550, { working: 40, down: 500 }]);
    expect(own(day, "b")).toEqual([20, 560, { working: 40, starved: 500 }]);
  });

  it("leaves out a break, also where a finished head blocks through it, and keeps what is finished into it as work", () => {
    // One place at b, whose machine takes 60 s: a's second head is blocked. Break of a's crew from 25 to 85.
    const plan = withDay(
      planOf(stream(constant(10), 3), [manual("a", 10, "team"), station("b", 60), CHILLER], {
        crews: [crew("team", 1)],
      }),
      { breaks: [pause("tea", 25, 60, { crews: ["team"] })] },
    );
    // a: 10-20, 20-30 (5 s into the break), blocked 30-80, a break of 60 s that begins late and ends at 90, 90-100,
    // blocked 100-140.
    // b: 20-80, 80-140, 140-200. a's last head leaves at 140.
    const day = runChecked(plan);
    expect(day.stages[0]!.stateSeconds[STATES.indexOf("blocked")]).toBe(50 + 40);
    expect(own(day, "a")).toEqual([10, 140, { working: 30, blocked: 40, "on break": 60 }]);
    expect(own(day, "b")).toEqual([20, 200, { working: 180 }]);
  });

  it("leaves out the hours between a crew's shifts", () => {
    const plan = withDay(
      planOf(stream(constant(10), 2), [manual("a", 30, "team"), CHILLER], { crews: [crew("team", [1, 1])] }),
      {
        shifts: [
          { name: "early", fromSeconds: 0, toSeconds: 35 },
          { name: "late", fromSeconds: 500, toSeconds: 900 },
        ],
      },
    );
    // 10-40 into the end of the early shift; the second head waits from 20, is worked on 500-530.
    expect(own(runChecked(plan), "a")).toEqual([10, 530, { working: 60, "on break": 460 }]);
  });

  it("is none where no head could come, and that of its senders beside the line", () => {
    const trim = station("trim", 7, { offLine: true });
    const sends = (share: number) =>
      planOf(stream(constant(10), 3), [
        station("a", 5, { diversions: [{ to: "trim", share }] }),
        station("b", 5),
        trim,
        CHILLER,
      ]);
    const all = runChecked(sends(1));
    // a 10-15, 20-25, 30-35; trim 15-22, 25-32, 35-42.
    expect(own(all, "trim")).toEqual([15, 42, { working: 21, starved: 6 }]);
    // Nobody comes to b: no share at all. Nobody is sent to trim, which might have been: it stood there from 15 to 35.
    expect(own(all, "b")).toBeNull();
    const none = runChecked(sends(1e-12));
    expect(own(none, "trim")).toEqual([15, 35, { starved: 20 }]);
  });

  it("runs to the end of the time watched while heads could still come: saturated, with a warm-up, or cut off", () => {
    const line = [station("a", 10), station("b", 4), dwell("chilling", 10, 10)];
    const day = runChecked(planOf(saturated(10), line), { warmUpHeads: 2 });
    // Carcasses at 24, 34, ...: watched from 34 until 10 more are out.
    expect(own(day, "a")).toEqual([34, 134, { working: 100 }]);
    expect(own(day, "b")).toEqual([34, 134, { working: 40, starved: 60 }]);
    const cut = withDay(planOf(stream(constant(10), 9), [station("a", 5), station("b", 5), CHILLER]), {
      ceilingSeconds: 47,
    });
    expect(own(runChecked(cut), "b")).toEqual([15, 47, { working: 17, starved: 15 }]);
  });

  it("of a dwell stage counts its empty places between its first head and its last", () => {
    const day = runChecked(
      planOf(stream(constant(10), 2), [station("a", 5), dwell("bleeding", 20, 3), station("c", 1), CHILLER]),
    );
    // In it 15-35 and 25-45.
    expect(own(day, "bleeding")).toEqual([15, 45, { working: 40, starved: 50 }]);
  });

  it("of a station on a chain goes from the first head in its window to the last one out of its hands", () => {
    const day = runChecked(
      planOf(stream(constant(20), 2), [station("a", 5), chain("rail", 6, 2, [onChain("cut", 1, 4, 3)]), CHILLER]),
    );
    const [first, second] = [passes(day, "cut", "entry"), passes(day, "cut", "exit")] as const;
    expect(own(day, "cut")).toEqual([first[0], second[1], { working: 6, starved: second[1]! - first[0]! - 6 }]);
  });

  const RUNS = { seed: 2026, numRuns: 400 };
  const stagesOfHeads = (plan: Plan, day: DayRecord) =>
    day.stages.filter(({ kind, name }) => kind !== "crates" && plan.line.every((s) => s.name !== name || !s.offLine));

  it("on 400 random plans goes from the first head in to the last one out, and its states fill it", () => {
    let finished = 0;
    fc.assert(
      fc.property(randomPlan, fc.nat(), (plan, replication) => {
        const day = runDay(compileLine(plan), { seed: "own time", replication, perHead: true });
        for (const stage of day.stages) {
          if (stage.ownTime === null || !Number.isFinite(stage.positions)) continue;
          const { fromSeconds, toSeconds, stateSeconds } = stage.ownTime;
          const total = stateSeconds.reduce((sum, seconds) => sum + seconds, 0);
          expect(Math.abs(total - stage.positions * (toSeconds - fromSeconds)), stage.name).toBeLessThan(1e-5);
          // Nothing is worked on outside of it.
          if (stage.kind !== "chain" && (stage.kind !== "crates" || day.status === "finished"))
            expect(stateSeconds[0]! - stage.stateSeconds[0]!, stage.name).toBeLessThan(1e-6);
        }
        if (day.status !== "finished" || plan.supply.kind === "saturated" || day.heads.onLine > 0) return;
        finished++;
        for (const { name, ownTime } of stagesOfHeads(plan, day)) {
          const seen = (moment: "entry" | "exit") => passes(day, name, moment).filter((at) => !Number.isNaN(at));
          const [entries, exits] = [seen("entry"), seen("exit")];
          if (exits.length === 0) expect(ownTime === null || ownTime.stateSeconds[0] === 0, name).toBe(true);
          // Heads of the first stage wait in their crates before they are hung.
          else if (name === "s0") expect(ownTime!.toSeconds).toBe(Math.max(...exits));
          else {
            // Heads that were there when the day began came in before it.
            const first = Math.max(0, Math.min(...entries));
            expect([ownTime!.fromSeconds, ownTime!.toSeconds]).toEqual([first, Math.max(...exits)]);
          }
        }
      }),
      RUNS,
    );
    expect(finished).toBeGreaterThan(200);
  });

  it("holds all the work of the day", () => {
    fc.assert(
      fc.property(randomPlan, fc.nat(), (plan, replication) => {
        const day = runDay(compileLine(plan), { seed: "own time", replication });
        for (const { name, kind, stateSeconds, ownTime } of day.stages) {
          if (kind === "chain" || kind === "crates") continue;
          expect(Math.abs((ownTime?.stateSeconds[0] ?? 0) - stateSeconds[0]!), name).toBeLessThan(1e-5);
        }
      }),
      RUNS,
    );
  });
});
