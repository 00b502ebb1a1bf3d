import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/plan.ts";
import { type DayRecord, runDay, STATES } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { constant, crew, dwell, manual, planOf, stream } from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";
import { runChecked } from "../../../support/timeline.ts";

const WORKING = STATES.indexOf("working");
const sum = (numbers: number[]) => numbers.reduce((total, number) => total + number, 0);

/** People that one position of each step needs, stations on chains and crate steps included. */
function peoplePerPosition(plan: Plan): Map<string, number> {
  const rows: [string, number][] = [];
  for (const stage of plan.line) {
    if (stage.kind === "station") rows.push([stage.name, stage.peoplePerPosition]);
    if (stage.kind === "chain") for (const on of stage.stations) rows.push([on.name, on.peoplePerPosition]);
  }
  const handling = plan.liveHandling;
  for (const step of handling === null ? [] : [...handling.toHanging, ...handling.back]) {
    rows.push([step.name, step.peoplePerPosition]);
  }
  return new Map(rows);
}

/** Person-seconds that the books of the crew and those of its stations disagree by. */
function disagreements(plan: Plan, day: DayRecord): number[] {
  const people = peoplePerPosition(plan);
  const byCrew = day.crews.map(({ busySeconds, work, jobSeconds }) => {
    return busySeconds - sum(work.map(({ seconds }) => seconds)) - jobSeconds;
  });
  const byStation = day.stages.map(({ name, stateSeconds }) => {
    const rows = day.crews.flatMap(({ work }) => work.filter(({ stage }) => stage === name));
    if (rows.length === 0) return 0;
    const atWork = sum(rows.map(({ seconds, repairSeconds }) => seconds - repairSeconds));
    return atWork - people.get(name)! * stateSeconds[WORKING]!;
  });
  return [...byCrew, ...byStation];
}

describe("a crew's work in hand", () => {
  it("is that at its stations, by their working time, with the repairs it waited for, and its jobs: on 400 random plans", () => {
    let [waited, jobs] = [0, 0];
    fc.assert(
      fc.property(randomPlan, fc.nat(), (plan, replication) => {
        const day = runDay(compileLine(plan), { seed: "crew work", replication });
        for (const seconds of disagreements(plan, day)) expect(Math.abs(seconds)).toBeLessThan(1e-6);
        waited += sum(day.crews.flatMap(({ work }) => work.map(({ repairSeconds }) => repairSeconds)));
        jobs += sum(day.crews.map(({ jobSeconds }) => jobSeconds));
      }),
      { seed: 2026, numRuns: 400 },
    );
    // Repairs and jobs do happen in these plans: without them the books would agree for want of anything to book.
    expect(waited).toBeGreaterThan(1000);
    expect(jobs).toBeGreaterThan(1000);
  });

  it("by hand: two people at one position, who wait out a repair of theirs, and what a warm-up cut off is not in it", () => {
    const plan = planOf(
      stream(constant(10), 3),
      [
        manual("a", 4, "pair", {
          peoplePerPosition: 2,
          breakdowns: [
            {
              name: "jam",
              clock: "running",
              scope: "position",
              uptimeSeconds: constant(6),
              repairSeconds: constant(5),
              crew: null,
              headInHand: "resume",
            },
          ],
        }),
        dwell("chilling", 60, Infinity),
      ],
      { crews: [crew("pair", 2)] },
    );
    // Heads at 10, 20, 30. The jam comes after 6 s of work: 2 s into the second head, at 22, for 5 s; then 8 s of work later.
    const day = runChecked(plan);
    expect(day.crews[0]).toMatchObject({
      busySeconds: 2 * (12 + 5),
      work: [{ stage: "a", seconds: 34, repairSeconds: 10 }],
      jobSeconds: 0,
    });
    const watched = runChecked(plan, { warmUpHeads: 1 });
    // The first carcass is out at 74, when all work is over.
    expect(watched.crews[0]).toMatchObject({ busySeconds: 0, work: [{ stage: "a", seconds: 0, repairSeconds: 0 }] });
  });
});
