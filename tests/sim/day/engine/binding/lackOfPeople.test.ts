import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../../sim/asked/plan/index.ts";
import { type DayRecord, runDay } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { constant, crew, manual, pause, planOf, stream } from "../../../../support/plans.ts";

function run(plan: Plan, replication = 0): DayRecord {
  return runDay(compileLine(plan), { seed: "lack", replication, binding: true });
}

function parts({ binding }: DayRecord): Record<string, number> {
  return Object.fromEntries(binding!.day.map(({ cause, stage, seconds }) => [`${cause} ${stage}`, seconds]));
}

/** All heads are there at the day's start. */
const atOnce = (heads: number) => stream(constant(0), heads);

describe("a wait for people", () => {
  it("is owed to too few of them where the crew works nowhere else", () => {
    // Two positions, one person, six heads of 10 s: one after another, and position 2 never works.
    const line = [manual("a", 10, "cutters", { positions: 2, buffer: Infinity })];
    const day = run(planOf(atOnce(6), line, { crews: [crew("cutters", 1)] }));
    expect(day.finishSeconds).toBe(60);
    expect(parts(day)).toEqual({ "work a": 10, "few people a": 50 });
  });

  it("is owed to who is absent where with them no head would wait", () => {
    const line = [manual("a", 10, "cutters", { positions: 2, buffer: Infinity })];
    const plan = planOf(atOnce(6), line, { crews: [crew("cutters", 2, { absentShare: 0.5 })] });
    const days = Array.from({ length: 20 }, (_, replication) => run({ ...plan }, replication));
    const short = days.find(({ crews }) => crews[0]!.absent[0] === 1)!;
    expect(short.crews[0]).toMatchObject({ people: [1], absent: [1] });
    expect(parts(short)).toEqual({ "work a": 10, "absent a": 50 });
    const whole = days.find(({ crews }) => crews[0]!.absent[0] === 0)!;
    expect(whole.finishSeconds).toBe(30);
    expect(parts(whole)).toEqual({ "work a": 30 });
  });

  it("is owed to too few where those absent would not have made up a position", () => {
    // A position takes two people; three are planned, one of two positions can be manned, with or without the third.
    const line = [manual("a", 10, "cutters", { positions: 2, peoplePerPosition: 2, buffer: Infinity })];
    const plan = planOf(atOnce(4), line, { crews: [crew("cutters", 3, { absentShare: 0.3 })] });
    const days = Array.from({ length: 30 }, (_, replication) => run(plan, replication));
    const short = days.find(({ crews }) => crews[0]!.absent[0] === 1)!;
    expect(parts(short)).toEqual({ "work a": 10, "few people a": 30 });
  });

  it("is owed to work elsewhere where the people come from there", () => {
    // One person, furthest downstream first: a 0-2, b 2-5, a 5-7, b 7-10.
    const line = [manual("a", 2, "pair", { buffer: 9 }), manual("b", 3, "pair", { buffer: 5 })];
    const day = run(planOf(atOnce(2), line, { crews: [crew("pair", 1)] }));
    expect(day.finishSeconds).toBe(10);
    expect(parts(day)).toEqual({ "work a": 4, "work b": 3, "people b": 3 });
  });

  it("leaves to a break its own length alone where an idle position lacks people all day", () => {
    // One person for two positions: heads end at 10, 20, ..., 50; the break is due at 45, begins at 50 and ends at 145 at
    // the earliest, at 150 where it has its whole length; then five heads more.
    const line = [manual("a", 10, "cutters", { positions: 2, buffer: Infinity })];
    const plan = planOf(atOnce(10), line, { crews: [crew("cutters", 1)] });
    const day = run({ ...plan, day: { ...plan.day, breaks: [pause("rest", 45, 100, { crews: ["cutters"] })] } });
    const back = day.finishSeconds - 50;
    expect([145, 150]).toContain(back);
    expect(parts(day)).toEqual({ "work a": 20, "few people a": 80, "planned stop a": back - 50 });
  });
});
