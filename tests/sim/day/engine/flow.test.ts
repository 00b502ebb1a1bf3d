import { describe, expect, it } from "vitest";
import {
  constant,
  crew,
  dwell,
  exponential,
  manual,
  planOf,
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";

// Every timeline below is worked by hand: the comment gives the way of thinking, the numbers are seconds.

describe("a station", () => {
  it("keeps a finished head on its position until the next stage has a place (blocking after service)", () => {
    // a takes 2, b takes 5, no place between. Head 1: a 0-2, b 2-7. Head 2: a 2-4, blocked to 7, b 7-12. Head 3: a 7-9.
    const day = runChecked(planOf(saturated(3), [station("a", 2), station("b", 5)]));
    expect(passes(day, "a", "start").slice(0, 3)).toEqual([0, 2, 7]);
    expect(passes(day, "a", "end").slice(0, 3)).toEqual([2, 4, 9]);
    expect(passes(day, "a", "exit").slice(0, 3)).toEqual([2, 7, 12]);
    expect(passes(day, "b", "end").slice(0, 3)).toEqual([7, 12, 17]);
    expect(secondsIn(day, "a")).toEqual({ working: 8, blocked: 9 });
    expect(secondsIn(day, "b")).toEqual({ working: 15, starved: 2 });
  });

  it("lets a head wait in a buffer place and frees the position for the next one", () => {
    // One place between: head 2 leaves a at 4 into the buffer; head 3: a 4-6, blocked until head 2 starts at b at 7.
    const day = runChecked(planOf(saturated(3), [station("a", 2), station("b", 5, { buffer: 1 })]));
    expect(passes(day, "a", "exit").slice(0, 3)).toEqual([2, 4, 7]);
    expect(passes(day, "b", "entry").slice(0, 3)).toEqual([2, 4, 7]);
    expect(passes(day, "b", "start").slice(0, 3)).toEqual([2, 7, 12]);
    expect(day.stages[1]!.queue.max).toBe(1);
    // Waiting in the buffer: head 2 from 4 to 7, head 3 from 7 to 12, head 4 from 12 to 17: 13 head-seconds in 17.
    expect(day.stages[1]!.queue.mean).toBeCloseTo(13 / 17, 12);
  });

  it("works side by side on its positions, first come first served", () => {
    // Heads at 1, 2, 3, ...; two positions of 3 s: 1-4, 2-5, 4-7, 5-8.
    const line = [station("a", 3, { positions: 2, buffer: Infinity })];
    const day = runChecked(planOf(stream(constant(1), 4), line));
    expect(passes(day, "a", "start")).toEqual([1, 2, 4, 5]);
    expect(passes(day, "a", "exit")).toEqual([4, 5, 7, 8]);
  });

  it("wakes blocked positions in the order in which they blocked", () => {
    // Heads arrive at 1 and 2 and finish at 4 and 5; b is busy with the first until 14; the second goes in then.
    const line = [station("a", 3, { positions: 2, buffer: Infinity }), station("b", 10)];
    const day = runChecked(planOf(stream(constant(1), 3), line));
    expect(passes(day, "b", "start")).toEqual([4, 14, 24]);
    expect(passes(day, "a", "start")).toEqual([1, 2, 4]);
  });

  it("passes a freed place upstream at the same instant, through any number of stations", () => {
    const line = [1, 1, 1, 1, 10].map((cycle, index) => station(`s${index}`, cycle));
    const day = runChecked(planOf(saturated(4), line));
    // The last station turns at 14, 24, 34: all blocked stations before it move then.
    for (const name of ["s0", "s1", "s2", "s3"]) expect(passes(day, name, "exit")).toContain(24);
  });
});

describe("travel", () => {
  it("holds the place it goes to, keeps the order and takes its time", () => {
    // a 2 s, 3 s of way, b 4 s, no buffer. Head 1: a 0-2, b 5-9. Head 2: ends at a at 4 but the only place of b is taken
    // (reserved from 2, held to 9): leaves at 9, arrives at 12, ends at 16.
    const line = [station("a", 2, { travelSeconds: constant(3) }), station("b", 4)];
    const day = runChecked(planOf(saturated(2), line));
    expect(passes(day, "a", "exit").slice(0, 2)).toEqual([2, 9]);
    expect(passes(day, "b", "entry").slice(0, 2)).toEqual([5, 12]);
    expect(passes(day, "b", "exit").slice(0, 2)).toEqual([9, 16]);
  });

  it("lets several heads be on their way at once when there are places for them", () => {
    const line = [station("a", 1, { travelSeconds: constant(10) }), station("b", 1, { buffer: 9 })];
    const day = runChecked(planOf(saturated(3), line));
    expect(passes(day, "b", "entry").slice(0, 3)).toEqual([11, 12, 13]);
  });

  it("never lets a head overtake, even when its own way is shorter", () => {
    const line = [
      station("a", 1, { travelSeconds: { family: "empirical", values: [1, 20] } }),
      station("b", 0.1, { buffer: Infinity }),
    ];
    const entries = passes(runChecked(planOf(saturated(40), line)), "b", "entry").filter((time) => !Number.isNaN(time));
    expect(entries).toEqual([...entries].sort((x, y) => x - y));
  });
});

describe("a dwell stage", () => {
  it("holds up to its places for the dwell and then lets heads out in order", () => {
    // Heads leave a at 1, 2, 3, 4; two places, 5 s: out at 6 and 7, then 3 enters at 6 (out 11), 4 at 7 (out 12).
    const line = [station("a", 1), dwell("bleeding", 5, 2)];
    const day = runChecked(planOf(saturated(4), line));
    expect(passes(day, "bleeding", "entry").slice(0, 4)).toEqual([1, 2, 6, 7]);
    expect(passes(day, "bleeding", "exit").slice(0, 4)).toEqual([6, 7, 11, 12]);
  });

  it("keeps a head that is ready behind one that is not", () => {
    const line = [station("a", 1), dwell("d", { family: "empirical", values: [2, 30] }, 10)];
    const day = runChecked(planOf(saturated(30), line));
    const exits = passes(day, "d", "exit").filter((time) => !Number.isNaN(time));
    expect(exits).toEqual([...exits].sort((x, y) => x - y));
  });

  it("books dwelling as work, waiting after it as blocked and empty places as starved", () => {
    // Out of a at 1, 2; dwell 3 s; b takes 10: head 1 dwells 1-4, b 4-14; head 2 dwells 2-5, waits 5-14; head 3 enters at 3.
    const line = [station("a", 1), dwell("d", 3, 5), station("b", 10)];
    const day = runChecked(planOf(saturated(1), line));
    // By 14: heads 1..6 came at 1..6, dwelt 3 s each; head 1 left at 4, the others are there (place of head 1 retaken).
    expect(passes(day, "d", "entry").slice(0, 6)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(secondsIn(day, "d")).toEqual({ working: 18, blocked: 9 + 8 + 7 + 6 + 5, starved: 5 * 14 - 18 - 35 });
  });

  it("passes a place that frees behind a blocked way out", () => {
    const line = [dwell("hold", 4, 3), station("b", 6)];
    const day = runChecked(planOf(stream(constant(1), 5), [station("in", 0), ...line]));
    // Heads come at 1..5: ready at 5, 6, 7; b takes them at 5, 11, 17; heads 4 and 5 enter at 5 and 11.
    expect(passes(day, "hold", "entry")).toEqual([1, 2, 3, 5, 11]);
    expect(passes(day, "b", "start")).toEqual([5, 11, 17, 23, 29]);
  });
});

describe("a crew", () => {
  it("holds a position for the whole cycle and is free while the finished head is blocked", () => {
    // One person for a (2 s) and b (3 s). Furthest downstream first: a 0-2, b 2-5, a 5-7, b 7-10, ...
    const line = [manual("a", 2, "crew"), manual("b", 3, "crew")];
    const day = runChecked(planOf(saturated(3), line, { crews: [crew("crew", 1)] }));
    expect(passes(day, "a", "start").slice(0, 3)).toEqual([0, 5, 10]);
    expect(passes(day, "b", "start").slice(0, 3)).toEqual([2, 7, 12]);
    expect(day.crews[0]).toMatchObject({ busySeconds: 15, presentSeconds: 15, peopleMax: 1 });
  });

  it("goes to the longest queue when its rule says so", () => {
    // Both queues unlimited. One person; a 1 s. After each a-cycle b has one more head; supply is endless (saturated a
    // shows no queue), so b, whose queue is longer, is served next.
    const line = [manual("a", 1, "crew"), manual("b", 1, "crew", { buffer: Infinity })];
    const rule = "longest queue" as const;
    const day = runChecked(planOf(saturated(2), line, { crews: [crew("crew", 1, { rule })] }));
    expect(passes(day, "b", "start").slice(0, 2)).toEqual([1, 3]);
  });

  it("keeps to the line's order when its rule is fixed", () => {
    // a is never short of heads, so with one person b gets nobody until the 3 places of b are full and a is blocked.
    const line = [manual("a", 1, "crew"), manual("b", 1, "crew", { buffer: 2 })];
    const day = runChecked(planOf(saturated(1), line, { crews: [crew("crew", 1, { rule: "fixed order" })] }));
    // Heads 1 to 3 fill b's places at 1, 2, 3; head 4 is done at 4 and blocked: the person turns to b at 4.
    expect(passes(day, "b", "start")[0]).toBe(4);
  });

  it("must have enough people for the position before it starts", () => {
    const line = [manual("lift", 4, "crew", { positions: 2, peoplePerPosition: 2 })];
    const day = runChecked(planOf(saturated(3), line, { crews: [crew("crew", 3)] }));
    expect(passes(day, "lift", "start").slice(0, 3)).toEqual([0, 4, 8]);
    expect(secondsIn(day, "lift")).toEqual({ working: 12, "no crew": 12 });
  });
});

describe("removals", () => {
  it("take their share off the line at the end of the stage's work", () => {
    const line = [
      station("a", 1),
      station("inspection", 1, { removals: [{ as: "condemned", share: 1 }] }),
      station("c", 1),
    ];
    const day = runChecked(planOf(stream(constant(2), 5), line));
    expect(day.heads.out).toEqual({ carcass: 0, condemned: 5 });
    expect(day.stages[2]!.processed).toBe(0);
  });

  it("divide heads among several destinations by their shares", () => {
    const removals = [
      { as: "condemned", share: 0.1 },
      { as: "trim", share: 0.2 },
    ];
    const day = runChecked(planOf(stream(constant(1), 20_000), [station("a", 0.5, { removals })]), { check: false });
    // Binomial: 5 standard deviations (false-alarm probability 6e-7 each).
    expect(Math.abs(day.heads.out.condemned! - 2000)).toBeLessThan(5 * Math.sqrt(20_000 * 0.09));
    expect(Math.abs(day.heads.out.trim! - 4000)).toBeLessThan(5 * Math.sqrt(20_000 * 0.16));
  });
});

describe("a day", () => {
  it("that can never end names the stages that hold heads", () => {
    const line = [station("a", 1), manual("b", 1, "nobody")];
    const day = runChecked(planOf(stream(constant(1), 3), line, { crews: [crew("nobody", 0)] }));
    expect(day.status).toBe("stuck");
    expect(day.stuckAt).toEqual(["a", "b"]);
  });

  it("whose clock stands still for ever is stopped", () => {
    const day = runChecked(planOf(saturated(1), [station("a", 0), station("b", 1, { buffer: Infinity })]), {
      check: false,
      perHead: false,
    });
    expect(day.status).toBe("stuck");
  });

  it("is cut at the plan's ceiling and says so", () => {
    const plan = planOf(stream(exponential(1), 1_000_000), [station("a", 1, { buffer: Infinity })]);
    const day = runChecked({ ...plan, day: { ...plan.day, ceilingSeconds: 100 } });
    expect(day.status).toBe("ceiling");
    expect(day.finishSeconds).toBe(100);
  });
});
