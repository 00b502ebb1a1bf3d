import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan, Supply } from "../../../../../sim/asked/plan/index.ts";
import { type BoundSeconds, type DayRecord, runDay, runDays } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { breakdown } from "../../../../support/breakdowns.ts";
import { handling, load } from "../../../../support/loads.ts";
import {
  constant,
  crateStep,
  crew,
  dwell,
  manual,
  pause,
  planOf,
  saturated,
  station,
  stream,
} from "../../../../support/plans.ts";
import { randomPlan } from "../../../../support/randomPlans.ts";

function run(plan: Plan, options = {}): DayRecord {
  return runDay(compileLine(plan), { seed: "binding", replication: 0, binding: true, ...options });
}

/** "work s1": seconds. */
function parts(bound: readonly BoundSeconds[]): Record<string, number> {
  return Object.fromEntries(
    bound.map(({ cause, stage, detail, seconds }) => [
      [cause, stage, detail].filter((word) => word).join(" "),
      seconds,
    ]),
  );
}

function sum(bound: readonly BoundSeconds[]): number {
  return bound.reduce((total, { seconds }) => total + seconds, 0);
}

describe("the binding path", () => {
  it("adds up to the day's end and to the end of work on random plans with every feature, and changes nothing else", () => {
    fc.assert(
      fc.property(randomPlan, fc.integer({ min: 0, max: 1000 }), (plan, replication) => {
        const day = run(plan, { replication });
        const { binding, ...rest } = day;
        const { binding: none, ...plain } = run(plan, { replication, binding: false });
        expect(none).toBeNull();
        expect(rest).toEqual(plain);
        if (day.status !== "finished") return;
        expect(sum(binding!.day)).toBeCloseTo(day.finishSeconds, 6);
        if (binding!.work) expect(sum(binding!.work)).toBeCloseTo(day.workFinishSeconds, 6);
        expect(Math.min(0, ...binding!.day.map(({ seconds }) => seconds))).toBe(0);
      }),
      { seed: 61, numRuns: 500 },
    );
  }, 120_000);

  it("goes through the first head's way and then the slowest station", () => {
    const day = run(planOf(saturated(10), [station("a", 2), station("b", 3), station("c", 1)]));
    expect(day.finishSeconds).toBe(33);
    expect(parts(day.binding!.day)).toEqual({ "work a": 2, "work b": 30, "work c": 1 });
  });

  it("tells work during which the stage before waited for a place", () => {
    // a: 0-3, 3-6, 6-9, 9-12 and blocked to 16, 16-19; b: 3-4, 6-7, 9-9.5, down to 15.5, to 16, 16-17, 19-20.
    const plan = planOf(saturated(5), [station("a", 3), station("b", 1, { breakdowns: [breakdown(2.5, 6)] })]);
    const day = run(plan);
    expect(day.finishSeconds).toBe(20);
    expect(parts(day.binding!.day)).toEqual({ "work a": 12, "work b": 1.5, "place b": 0.5, "repair b jam": 6 });
  });

  it("owes a repair and the wait for who does it to the station that failed", () => {
    const line = [
      station("a", 4, { breakdowns: [breakdown(2, 10, { crew: "fitters" })] }),
      station("b", 5, { buffer: 9, breakdowns: [breakdown(3, 20, { crew: "fitters" })] }),
    ];
    const day = run(planOf(saturated(1), line, { crews: [crew("fitters", 1)] }));
    // a: 0-2, repaired to 12, works to 14, begins its next head and fails, repaired to 24.
    // b: 14-17, waits for the fitter to 24, repaired to 44, works to 46.
    expect(day.finishSeconds).toBe(46);
    expect(parts(day.binding!.day)).toEqual({
      "work a": 4,
      "repair a jam": 10,
      "work b": 5,
      "repairer b": 7,
      "repair b jam": 20,
    });
  });

  it("counts the hours before a break, and owes only the wait to it", () => {
    const plan = planOf(saturated(10), [manual("a", 3, "cutters")], { crews: [crew("cutters", 1)] });
    const day = run({ ...plan, day: { ...plan.day, breaks: [pause("rest", 10, 20, { crews: ["cutters"] })] } });
    // Four heads to 12 s; the break of 20 s is due at 10 and lasts from 12 to 32; six heads from 32 to 50.
    expect(day.finishSeconds).toBe(50);
    expect(parts(day.binding!.day)).toEqual({ "work a": 30, "planned stop a": 20 });
  });

  it("owes to shared people the work that kept them", () => {
    // One person at a and b, furthest downstream first: a 2 s, b 3 s, in turn.
    const line = [manual("a", 2, "pair"), manual("b", 3, "pair", { buffer: 5 })];
    const day = run(planOf(saturated(3), line, { crews: [crew("pair", 1)] }));
    expect(day.finishSeconds).toBe(15);
    expect(parts(day.binding!.day)).toEqual({ "work a": 6, "work b": 3, "people b": 6 });
  });

  it("begins with the arrival of the load that the line waited for", () => {
    const supply: Supply = { kind: "loads", loads: [load("early", 0, 1, 2), load("late", 100, 1, 2)] };
    const liveHandling = handling([crateStep("unloading", 1), crateStep("sliding", 1)]);
    const day = run(planOf(supply, [station("hanging", 5)], { liveHandling }));
    const found = parts(day.binding!.day);
    expect(found["load late"]).toBe(100);
    expect(found["load early"]).toBeUndefined();
    expect(sum(day.binding!.day)).toBeCloseTo(day.finishSeconds, 9);
  });

  it("goes through heads of a stream that come slower than they are worked on", () => {
    const day = run(planOf(stream(constant(7), 4), [station("a", 2)]));
    expect(parts(day.binding!.day)).toEqual({ "work a": 2, arrivals: 28 });
  });

  it("counts dwell and travel, and a dwell that lets nobody in", () => {
    const line = [station("a", 1, { travelSeconds: constant(4) }), dwell("bleeding", 10, 1)];
    const day = run(planOf(saturated(3), line));
    expect(day.finishSeconds).toBe(1 + 4 + 10 + 4 + 10 + 4 + 10);
    expect(parts(day.binding!.day)).toEqual({
      "work a": 1,
      "travel a": 12,
      "dwell bleeding": 10,
      "place bleeding": 20,
    });
  });

  it("leaves the warm-up out", () => {
    const plan = planOf(saturated(40), [station("a", 2), station("b", 3)]);
    const day = run(plan, { warmUpHeads: 10 });
    expect(day.watchedFromSeconds).toBe(32);
    expect(parts(day.binding!.day)).toEqual({ "work b": 120 });
  });

  it("is null on a day that did not end by itself", () => {
    const plan = planOf(saturated(1000), [station("a", 2)]);
    expect(run({ ...plan, day: { ...plan.day, ceilingSeconds: 50 } }).binding).toBeNull();
  });
});

describe("a day that goes on from the one before", () => {
  // Killed in 1 s, chilled 100 s, packed in 5 s.
  const line = [station("kill", 1), dwell("chiller", 100, Infinity), station("packing", 5, { buffer: Infinity })];
  const heads = (number: number) => planOf(stream(constant(10), number), line);
  const closed = (plan: Plan, untilSeconds: number) => ({
    ...plan,
    day: { ...plan.day, overnight: [{ stage: "chiller", untilSeconds }] },
  });
  const second = (today: Plan, tomorrow: Plan) => {
    const days = [today, tomorrow].map((plan, number) => ({
      ...{ line: compileLine(plan), startSeconds: number * 1000, number },
    }));
    return runDays(days, { seed: "binding", replication: 0, calendarDays: 2, binding: true, check: true }).days;
  };

  it("names work on what was left over, and counts the day alone from its own start", () => {
    // Forty stay; they are packed from 0 to 200. The day's own, ready at 111 and 121, follow to 210.
    const [first, next] = second(closed(heads(40), 50), heads(2));
    expect(parts(first!.binding!.day)).toEqual({ arrivals: 400, "work kill": 1 });
    expect(next!.workFinishSeconds).toBe(210);
    expect(parts(next!.binding!.work!)).toEqual({ "left over packing": 200, "work packing": 10 });
  });

  it("names the rest of their time in the chiller, and nothing where the way does not lead back to them", () => {
    const slow = [station("kill", 1), dwell("chiller", 1200, Infinity), station("packing", 5)];
    const plan = planOf(stream(constant(10), 1), slow);
    // Hung at 11; 211 of 1200 s are left, packed to 216; the day's own is ready at 1211.
    expect(parts(second(closed(plan, 50), closed(plan, 300))[1]!.binding!.work!)).toEqual({
      "left over chiller": 211,
      "left over packing": 5,
    });
    expect(parts(second(closed(heads(1), 50), heads(2))[1]!.binding!.work!)).toEqual({
      arrivals: 20,
      "work kill": 1,
      "dwell chiller": 100,
      "work packing": 5,
    });
  });

  it("adds up to each day's own end over three days of random plans", () => {
    let named = 0;
    fc.assert(
      fc.property(randomPlan, fc.nat({ max: 999 }), (plan, replication) => {
        fc.pre(plan.supply.kind !== "saturated");
        const stage = plan.line.find(({ kind }) => kind === "dwell")?.name;
        const overnight = stage === undefined ? [] : [{ stage, untilSeconds: 60 }];
        const closing = { rule: "stop hanging" as const, atSeconds: 150 };
        const day = compileLine({ ...plan, day: { ...plan.day, closing, overnight } });
        const days = [0, 1, 2].map((number) => ({ line: day, startSeconds: number * 20_000, number }));
        const options = { seed: "nights", replication, calendarDays: 3 };
        const record = runDays(days, { ...options, binding: true });
        for (const { binding, status, finishSeconds, workFinishSeconds } of record.days) {
          if (status !== "finished") continue;
          expect(sum(binding!.day)).toBeCloseTo(finishSeconds, 6);
          if (binding!.work) expect(sum(binding!.work)).toBeCloseTo(workFinishSeconds, 6);
          expect(Math.min(0, ...binding!.day.map(({ seconds }) => seconds))).toBe(0);
          if (binding!.day.some(({ cause }) => cause === "left over")) named++;
        }
      }),
      { seed: 62, numRuns: 100 },
    );
    expect(named).toBeGreaterThan(20);
  }, 60_000);
});
