import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan, Point } from "../../../../sim/asked/plan/plan.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { constant, dwell, pause, planOf, station, stream } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

// Every timeline below is worked by hand: the comment gives the way of thinking, the numbers are seconds.

type Limit = Plan["limits"][number];

const at = (stage: string, moment: Point["moment"]): Point => ({ stage, moment });

function limit(name: string, from: Point, to: Point, changes: Partial<Limit> = {}): Limit {
  return { name, from, to, minSeconds: null, maxSeconds: null, source: "test", ...changes };
}

describe("the end of a dwell", () => {
  // Heads come at 10, 20, 30, 40 and dwell 30 s: their time is up at 40, 50, 60, 70. b takes 26 s each, from 40, 66, 92 and
  // 118 on: the fourth head is at the front from 92 on, 52 s after it came in.
  const line = [station("a", 0, { buffer: Infinity }), dwell("d", 30, 5), station("b", 26)];
  const plan = planOf(stream(constant(10), 4), line, {
    limits: [
      limit("dwell", at("d", "start"), at("d", "end"), { maxSeconds: 30 }),
      limit("wait", at("d", "end"), at("b", "start"), { maxSeconds: 20 }),
    ],
  });

  it("is the moment its time is up, wherever the head stands in the queue", () => {
    const day = runChecked(plan);
    expect(passes(day, "d", "start")).toEqual([10, 20, 30, 40]);
    expect(passes(day, "d", "end")).toEqual([40, 50, 60, 70]);
    expect(passes(day, "d", "exit")).toEqual([40, 66, 92, 118]);
  });

  it("is the same for state seconds and limits: what follows is waiting", () => {
    const day = runChecked(plan);
    expect(secondsIn(day, "d")).toMatchObject({ working: 4 * 30, blocked: 0 + 16 + 32 + 48 });
    // In 30 s exactly, all four; waits of 0, 16, 32 and 48 s: two of them beyond 20 s.
    expect(day.limits[0]!.tally).toMatchObject({ count: 4, min: 30, max: 30 });
    expect(day.limits[1]!.tally).toMatchObject({ count: 4, min: 0, max: 48, mean: 24 });
    expect(day.limits.map(({ beyond }) => beyond)).toEqual([0, 2]);
  });

  it("comes head by head behind a stop: thirteen heads wait too long behind a trough of twelve, not two", () => {
    // A head every 10 s, 90 s in the trough, 9 s at the legs without a place before them; the legs stand from 1800 to 2400.
    // The head that came into the trough at 10 n is ready at 10 n + 90: head 171 is the last one begun, at 1800 (work goes
    // before the calendar). Head 172 is ready at 1810 and stands at the legs; the twelve in the trough are then 173 to 184,
    // ready at 1820 ... 1930. From 2400 on one begins every 9 s: head 172 + k after 590 - k s of waiting for k = 0 ... 12,
    // the last one 578 s. Head 185 came in when head 173 left, at 2409: ready at 2499, it begins at 2400 + 13 x 9 = 2517,
    // 18 s later; those after it come into the trough one every 9 s too. Told by the front of the queue, the wait of head
    // 174 would begin at 2409, and two heads would be outside.
    const trough = [station("stick", 0, { buffer: Infinity }), dwell("bleeding", 90, 12), station("legs", 9)];
    const bled = limit("bled", at("bleeding", "end"), at("legs", "start"), { maxSeconds: 120 });
    const stopped = withDay(planOf(stream(constant(10), 300), trough, { limits: [bled] }), {
      breaks: [pause("stop", 1800, 600, { stages: ["legs"] })],
    });
    const day = runChecked(stopped);
    const ends = passes(day, "bleeding", "end");
    const starts = passes(day, "legs", "start");
    expect([171, 172, 173, 184, 185].map((head) => ends[head - 1])).toEqual([1800, 1810, 1820, 1930, 2499]);
    expect([171, 172, 173, 184, 185].map((head) => starts[head - 1])).toEqual([1800, 2400, 2409, 2508, 2517]);
    expect(day.limits[0]).toMatchObject({ beyond: 13, tally: { count: 300, max: 590 } });
  });

  it("opens a gate that reaches to it, though the head cannot leave yet", () => {
    // At most two heads from the stun to the end of bleeding. Stun 1-2 and 2-3; bleeding 2-12 and 3-13; the hand behind it
    // works 2 s but stands until 40. Heads 3 and 4 are stunned when the time of 1 and 2 is up, at 12 and 13 (ready at 23, 24), head 5
    // at 23. By the front of the queue it would have been one head at a time from 40 on.
    const gated = planOf(
      stream(constant(1), 5),
      [station("stun", 1, { buffer: Infinity }), dwell("bleeding", 10, 9), station("hand", 2)],
      { gates: [{ name: "gate", from: "stun", to: at("bleeding", "end"), atMost: 2 }] },
    );
    const day = runChecked(withDay(gated, { breaks: [pause("stop", 11, 29, { stages: ["hand"] })] }));
    expect(passes(day, "stun", "start")).toEqual([1, 2, 12, 13, 23]);
    expect(passes(day, "bleeding", "end")).toEqual([12, 13, 23, 24, 34]);
    expect(passes(day, "hand", "start")).toEqual([40, 42, 44, 46, 48]);
  });

  it("comes in another order than the heads when dwells differ; heads leave in their order all the same", () => {
    // Out is free: a head leaves when its time is up and the head before it has left.
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 12 }), (values) => {
        const varied = dwell("d", { family: "empirical", values }, 20);
        const day = runChecked(planOf(stream(constant(3), 60), [station("a", 0, { buffer: Infinity }), varied]));
        const [starts, ends, exits] = (["start", "end", "exit"] as const).map((moment) => passes(day, "d", moment));
        let left = 0;
        let dwelt = 0;
        for (const [head, end] of ends!.entries()) {
          expect(values).toContain(end - starts![head]!);
          left = Math.max(left, end);
          expect(exits![head]).toBe(left);
          dwelt += end - starts![head]!;
        }
        expect(secondsIn(day, "d").working).toBe(dwelt);
      }),
      { seed: 16, numRuns: 60 },
    );
  });

  it("owes what a head waits behind another one to that one's dwell", () => {
    // Dwells of 50 s (head 1, in at 10) and 5 s would need draws; with fixed ones a stop does it: b stands until 100. Head 1
    // is ready at 40 and begun at 100: 10 s of arrivals, 30 s of dwell, 60 s of the stop, 26 s of work; head 2 waits for b.
    const day = runDay(compileLine(withDay(plan, { breaks: [pause("stop", 35, 65, { stages: ["b"] })] })), {
      seed: "test",
      replication: 0,
      binding: true,
    });
    const seconds = Object.fromEntries(day.binding!.day.map((cell) => [cell.cause, cell.seconds]));
    expect(seconds).toEqual({ arrivals: 10, dwell: 30, "planned stop": 60, work: 4 * 26 });
    expect(day.finishSeconds).toBe(204);
  });
});

describe("a full vessel at a dwell stage", () => {
  it("ends no dwell late: heads keep what it cannot take, and give it in their order when there is room", () => {
    // A kilogram a head into a tank of two. Heads at 1 ... 5 dwell 4 s: time up at 5, 6, 7, 8, 9. The tank is full at 6 and
    // empty at 16: heads 3 to 5 stand meanwhile. At 16 heads 3 and 4 fill it again and leave; head 5 gives at 26.
    const byProducts = [{ name: "blood", share: 0.4, of: "live weight" as const, vessel: "tank" }];
    const tank = {
      name: "tank",
      capacityKg: 2,
      emptyAtKg: 2,
      emptyingSeconds: 10,
      crew: null,
      whenFull: "stop" as const,
    };
    const line = [station("a", 0, { buffer: Infinity }), dwell("bleeding", 4, 9, { byProducts })];
    const day = runChecked(planOf(stream(constant(1), 5), line, { vessels: [tank] }));
    expect(passes(day, "bleeding", "end")).toEqual([5, 6, 7, 8, 9]);
    expect(passes(day, "bleeding", "exit")).toEqual([5, 6, 16, 16, 26]);
    expect(day.vessels[0]).toMatchObject({ emptied: 2, maxKg: 2, fullSeconds: 20 });
    expect(day.masses.byProductsKg.blood).toBeCloseTo(5, 12);
    expect(secondsIn(day, "bleeding")).toMatchObject({ working: 20, blocked: 9 + 8 + 17 });
  });
});
