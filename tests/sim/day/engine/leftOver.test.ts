import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { dayNotes } from "../../../../sim/day/observations/index.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { constant, crew, dwell, manual, planOf, station, stream } from "../../../support/plans.ts";

const SHIFTS = [
  { name: "early", fromSeconds: 0, toSeconds: 3600 },
  { name: "late", fromSeconds: 3600, toSeconds: 7200 },
];

/** A head every minute for 100 min; the second station's crew goes after the first hour. */
function plan(changes: Partial<Plan> = {}): Plan {
  const line = [
    manual("hanging", 10, "live", { buffer: Infinity }),
    dwell("bleeding", 120, 10),
    manual("skinning", 30, "dressing", { buffer: 4 }),
  ];
  const made = planOf(stream(constant(60), 100), line, {
    crews: [crew("live", [1, 1]), crew("dressing", [1, 0])],
    ...changes,
  });
  return { ...made, day: { ...made.day, shifts: SHIFTS } };
}

function run(of: Plan) {
  const day = runDay(compileLine(of), { seed: "left", replication: 0, check: true });
  return { day, notes: dayNotes(of, day) };
}

describe("a day that does not end by itself", () => {
  it("names the stage, the heads and the crew that is gone, then who waits behind", () => {
    const { day, notes } = run(plan());
    expect(day.status).toBe("stuck");
    // In skinning 4 places and one at the position; 10 in bleeding; one blocked at hanging, the rest before it.
    const done = day.heads.out.carcass!;
    expect(day.left).toEqual([
      { stage: "hanging", count: 100 - done - 15, reason: "the next stage", of: [] },
      { stage: "bleeding", count: 10, reason: "the next stage", of: [] },
      { stage: "skinning", count: 5, reason: "people", of: ["dressing"] },
    ]);
    expect(notes).toEqual([
      "5 heads at 'skinning' stay unworked: nobody of 'dressing' is on duty after 07:00, the end of its last shift.",
      `Waiting for a place behind them: ${100 - done - 15} heads at 'hanging', 10 heads at 'bleeding'.`,
    ]);
  });

  it("tells people who are too few for one position, with those absent", () => {
    const line = [manual("lifting", 10, "lifters", { buffer: Infinity, peoplePerPosition: 2 })];
    const made = planOf(stream(constant(1), 3), line, { crews: [crew("lifters", 2, { absentShare: 0.5 })] });
    for (let replication = 0; replication < 40; replication++) {
      const day = runDay(compileLine(made), { seed: "left", replication });
      if (day.crews[0]!.absent[0] !== 1) continue;
      expect(dayNotes(made, day)).toEqual([
        "Absent today: 'lifters' 1 of 2.",
        "3 heads at 'lifting' stay unworked: one position takes 2 people, 'lifters' has 1 (1 absent).",
      ]);
      return;
    }
    expect.unreachable("of 40 days none has one of two people absent (probability below 1e-12)");
  });

  it("tells that nobody came", () => {
    const made = planOf(stream(constant(1), 3), [manual("a", 1, "crew", { buffer: Infinity })], {
      crews: [crew("crew", 4, { absentShare: 1 })],
    });
    expect(run(made).notes).toEqual([
      "Absent today: 'crew' 4 of 4.",
      "3 heads at 'a' stay unworked: nobody of 'crew' came today (4 absent).",
    ]);
  });

  it("tells a station that is down with nobody to repair it", () => {
    const line = [station("a", 10, { buffer: Infinity, breakdowns: [breakdown(4000, 20, { crew: "fitters" })] })];
    const made = plan({ line, crews: [crew("fitters", [1, 0])] });
    made.supply = stream(constant(10), 500);
    const { day, notes } = run(made);
    expect(day.left).toMatchObject([{ stage: "a", reason: "a repair", of: ["fitters"] }]);
    expect(notes[0]).toMatch(
      /^\d+ heads at 'a' stay unworked: the station has broken down, and nobody of 'fitters' is there/u,
    );
  });

  it("tells heads whose time is not over when the longest day is", () => {
    const made = planOf(stream(constant(1), 3), [station("a", 1), dwell("chilling", 1000, 10)]);
    const { day, notes } = run({ ...made, day: { ...made.day, ceilingSeconds: 500 } });
    expect(day.left).toEqual([{ stage: "chilling", count: 3, reason: "time", of: [] }]);
    expect(notes).toEqual(["3 heads at 'chilling' are not through yet: their time is not over."]);
  });

  it("has nothing to tell where the day ended and nobody can be absent", () => {
    const { day, notes } = run(plan({ crews: [crew("live", [1, 1]), crew("dressing", [1, 1])] }));
    expect([day.status, day.left, notes]).toEqual(["finished", [], []]);
  });
});

describe("who is absent", () => {
  it("is told by crew and shift where the shifts differ", () => {
    const crews = [crew("live", [8, 2], { absentShare: 0.4 }), crew("dressing", [1, 1])];
    const { day, notes } = run(plan({ crews }));
    const [early, late] = day.crews[0]!.absent;
    expect(early).toBeGreaterThan(0);
    expect(day.crews[0]!.people).toEqual([8 - early!, 2 - late!]);
    expect(notes[0]).toBe(`Absent today: 'live' ${early} of 8 (early), ${late} of 2 (late).`);
  });
});
