import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { advance, runDay, startDay } from "../../../../sim/day/engine/index.ts";
import { BLOCKED, NO_CREW } from "../../../../sim/day/engine/state/codes.ts";
import { compileLine, STATION } from "../../../../sim/day/line/index.ts";
import { handling, load } from "../../../support/loads.ts";
import {
  constant,
  crateStep,
  crew,
  exponential,
  manual,
  planOf,
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";

// Every timeline below is worked by hand: the comment gives the way of thinking, the numbers are seconds.

describe("a crew's rule", () => {
  // Heads at 10 and 20. Head 1: a 10-13, b (a machine) 13-20. At 20 head 1 reaches c, and then head 2 reaches a; the person
  // stands idle until then.
  const line = [manual("a", 3, "crew", { buffer: 1 }), station("b", 7), manual("c", 2, "crew")];
  const onRule = (rule: "fixed order" | "furthest downstream" | "longest queue") =>
    runChecked(planOf(stream(constant(10), 2), line, { crews: [crew("crew", 1, { rule })] }));

  it("sends who stood idle where it says, not where a head turns up first at that instant", () => {
    // Fixed order: a 20-23 first, then c 23-25; head 2 is at c at 30. Downstream: c 20-22, a 22-25.
    const fixed = onRule("fixed order");
    expect(passes(fixed, "a", "start")).toEqual([10, 20]);
    expect(passes(fixed, "c", "start")).toEqual([23, 30]);
    expect(secondsIn(fixed, "c")).toMatchObject({ "no crew": 3, working: 4 });
    expect(secondsIn(fixed, "a")["no crew"]).toBeUndefined();
    for (const day of [onRule("furthest downstream"), onRule("longest queue")]) {
      expect(passes(day, "a", "start")).toEqual([10, 22]);
      expect(passes(day, "c", "start")).toEqual([20, 32]);
      expect(secondsIn(day, "a")).toMatchObject({ "no crew": 2 });
    }
  });

  it("holds for one cascade: the head that leaves a machine and the place it frees call at the same instant", () => {
    // Heads without end. a 0-3, b 3-10, a again 3-6 and blocked until 10. At 10 head 1 goes to c, head 2 to b, and head 3
    // could begin at a: by fixed order it does, 10-13, and c follows 13-15. So it goes on every 7 s.
    const plan = planOf(saturated(3), line, { crews: [crew("crew", 1, { rule: "fixed order" })] });
    const day = runChecked(plan);
    expect(passes(day, "a", "start").slice(0, 4)).toEqual([0, 3, 10, 17]);
    expect(passes(day, "c", "start").slice(0, 3)).toEqual([13, 20, 27]);
    expect(secondsIn(day, "a")["no crew"]).toBeUndefined();
  });

  it("never lets the preferred station wait for a person who goes elsewhere at that instant, on random days", () => {
    // Head k can begin at a when head k - 1 has left it. If it begins later, the one person is at c since before that, and
    // comes when the work there ends.
    const varied = [
      manual("a", exponential(3), "crew"),
      station("b", exponential(7)),
      manual("c", exponential(3), "crew", { buffer: 2 }),
    ];
    const plan = planOf(saturated(200), varied, { crews: [crew("crew", 1, { rule: "fixed order" })] });
    let waits = 0;
    for (let replication = 0; replication < 20; replication++) {
      const day = runChecked(plan, { replication, check: false });
      const [aStart, aExit] = [passes(day, "a", "start"), passes(day, "a", "exit")];
      const [cStart, cEnd] = [passes(day, "c", "start"), passes(day, "c", "end")];
      for (let head = 1; head < 200; head++) {
        if (aStart[head] === aExit[head - 1]) continue;
        waits++;
        const work = cEnd.indexOf(aStart[head]!);
        expect(cStart[work]).toBeLessThan(aExit[head - 1]!);
      }
    }
    expect(waits).toBeGreaterThan(100);
  });

  it("is applied again when what is begun takes no time", () => {
    // One person for three steps that take no time: each head is through at the instant at which it comes.
    const quick = ["a", "b", "c"].map((name) => manual(name, 0, "crew"));
    const day = runChecked(planOf(stream(constant(5), 3), quick, { crews: [crew("crew", 1)] }));
    expect(passes(day, "c", "end")).toEqual([5, 10, 15]);
    expect(secondsIn(day, "a")).toEqual({ starved: 15 });
    expect(day.crews[0]).toMatchObject({ busySeconds: 0, presentSeconds: 15 });
  });
});

describe("several crews at one instant", () => {
  // Heads at 10 and 20; b is a machine of 6 s, so that head 1 reaches c (5 s) at 20, when head 2 reaches a (4 s): both
  // stations would have the own person first. By its rule that is c's, and the relief goes to a, whatever their order in the plan.
  const line = [
    manual("a", 4, "own", { crews: ["own", "relief"] }),
    station("b", 6),
    manual("c", 5, "own", { crews: ["own", "relief"] }),
  ];

  it.each([[["own", "relief"]], [["relief", "own"]]])("send their own people first: %j", (order) => {
    const crews = order.map((name) => crew(name, 1));
    const day = runChecked(planOf(stream(constant(10), 2), line, { crews }));
    expect(passes(day, "a", "start")).toEqual([10, 20]);
    expect(passes(day, "c", "start")).toEqual([20, 30]);
    // Own: head 1 at a, heads 1 and 2 at c; relief: head 2 at a.
    const busy = Object.fromEntries(day.crews.map(({ name, busySeconds }) => [name, busySeconds]));
    expect(busy).toEqual({ own: 4 + 5 + 5, relief: 4 });
  });
});

describe("what released work that people begin when the instant is over", () => {
  it("is the event that brought it, or freed the people, not the last one of the instant", () => {
    // One person. x is fed by a machine; at 20 head 1 leaves b for c while head 2 arrives at a, c being preferred. The day ends with
    // head 2 at c: arrivals 20 (head 2), then a waits for the person at c until 22: people; a 22-25, b 25-32, c 32-34.
    const line = [manual("a", 3, "crew", { buffer: 1 }), station("b", 7), manual("c", 2, "crew")];
    const plan = planOf(stream(constant(10), 2), line, { crews: [crew("crew", 1)] });
    const day = runDay(compileLine(plan), { seed: "test", replication: 0, binding: true });
    const owed = day.binding!.day.map(({ cause, stage, seconds }) => [cause, stage, seconds]);
    // What a waits for is c's work, begun when head 1 left b at 20: 10 s of arrivals, 3 at a, 7 at b, 2 at c for its people.
    expect(owed).toEqual([
      ["work", "a", 3 + 3],
      ["work", "b", 7 + 7],
      ["work", "c", 2],
      ["people", "c", 2],
      ["arrivals", "", 10],
    ]);
  });
});

describe("idle positions", () => {
  it("lack a crew no more than there are heads waiting; the others are starved", () => {
    // Five positions, one person, two heads at 1 and 2, 90 s each: 1-91 and 91-181. The second head waits at one position
    // from 2 to 91, where "no crew" at all four would be 356 s; of 5 x 181 s the rest is starved.
    const line = [manual("a", 90, "crew", { positions: 5 })];
    const day = runChecked(planOf(stream(constant(1), 2), line, { crews: [crew("crew", 1)] }));
    expect(secondsIn(day, "a")).toEqual({ working: 180, "no crew": 89, starved: 5 * 181 - 180 - 89 });
  });

  it("lack a crew before the hanging point's crates in the same way: 90 s, not 360", () => {
    // A crate of two heads at once, 90 s a head, five positions, one person: 0-90 and 90-180.
    const steps = [crateStep("unloading", 0), crateStep("feeding", 0)];
    const line = [manual("hanging", 90, "crew", { positions: 5 })];
    const supply = { kind: "loads" as const, loads: [load("lorry", 0, 1, 2)] };
    const plan = planOf(supply, line, { liveHandling: handling(steps), crews: [crew("crew", 1)] });
    expect(secondsIn(runChecked(plan), "hanging")).toEqual({ working: 180, "no crew": 90, starved: 5 * 180 - 270 });
  });

  it("are held back no more than there are heads waiting", () => {
    // Three positions; at most one head from a's start to b's end. Heads at 1, 2, 3; a 1 s, b 9 s. a: head 1 1-2, b 2-11.
    // Held: head 2 from 2 to 11, head 3 from 3; head 2 again a 11-12, b 12-21, head 3 held to 21: 9 + 8 + 10 s blocked.
    const line = [station("a", 1, { positions: 3, buffer: Infinity }), station("b", 9, { buffer: Infinity })];
    const gates = [{ name: "gate", from: "a", to: { stage: "b", moment: "end" as const }, atMost: 1 }];
    const day = runChecked(planOf(stream(constant(1), 3), line, { gates }));
    expect(passes(day, "a", "start")).toEqual([1, 11, 21]);
    expect(secondsIn(day, "a")).toMatchObject({ working: 3, blocked: 9 + 8 + 10 });
    expect(day.stages[0]!.heldSeconds).toBe(9 + 10);
  });

  it("lack a crew or are held back for no more work than there is, at any instant of random plans", () => {
    let met = 0;
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const line = compileLine(plan);
        const day = startDay(line, { seed: "idle", replication: 0 });
        for (let events = 0; events < 400 && !day.finished; events++) {
          const next = day.calendar.times[day.calendar.next()]!;
          if (next === Infinity) return;
          advance(day, next);
          if (day.finished) return;
          for (const { positions, queue, perCycle, isHanging, idle, kind } of day.stageAt) {
            if (isHanging || kind !== STATION) continue;
            const wanting = positions.filter(
              ({ item, state }) => item === null && (state === NO_CREW || state === BLOCKED),
            ).length;
            if (wanting === 0) continue;
            met++;
            expect(wanting).toBe(Math.min(idle, Math.ceil(queue.length / perCycle)));
          }
        }
      }),
      { seed: 2026, numRuns: 230 },
    );
    expect(met).toBeGreaterThan(1000);
  });
});
