import { describe, expect, it } from "vitest";
import type { Gate, Point } from "../../../../sim/asked/plan/plan.ts";
import { constant, crew, manual, pause, planOf, station, stream } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

const gate = (from: string, to: Point, atMost: number, name = "gate"): Gate => ({ name, from, to, atMost });

describe("a gate from stunning to sticking", () => {
  const line = [station("stun", 2, { buffer: Infinity }), station("stick", 3, { buffer: Infinity })];

  it("lets the next head be stunned only when the last one is through", () => {
    // Heads at 1, 2, 3. Stun 1-3, stick 3-6; only then stun 6-8, stick 8-11, stun 11-13, stick 13-16.
    const gates = [gate("stun", { stage: "stick", moment: "end" }, 1)];
    const day = runChecked(planOf(stream(constant(1), 3), line, { gates }));
    expect(passes(day, "stun", "start")).toEqual([1, 6, 11]);
    expect(passes(day, "stick", "end")).toEqual([6, 11, 16]);
  });

  it("is what the held stage is blocked by, and its seconds are counted", () => {
    // The stun is free at 3 and held to 6, free at 8 and held to 11. Nobody is between the points before 1: 15 of 16 s.
    const gates = [gate("stun", { stage: "stick", moment: "end" }, 1)];
    const day = runChecked(planOf(stream(constant(1), 3), line, { gates }));
    expect(day.stages[0]!.heldSeconds).toBe(6);
    expect(secondsIn(day, "stun")).toEqual({ working: 6, blocked: 6, starved: 4 });
    expect(day.gates).toEqual([{ name: "gate", atMost: 1, mean: 15 / 16, max: 1 }]);
  });

  it("opens where its far end says: at the start of sticking the next head may be stunned", () => {
    // Stun 1-3, stick from 3: stun 3-5, waits for the sticker until 6; stun 6-8.
    const gates = [gate("stun", { stage: "stick", moment: "start" }, 1)];
    const day = runChecked(planOf(stream(constant(1), 3), line, { gates }));
    expect(passes(day, "stun", "start")).toEqual([1, 3, 6]);
    expect(passes(day, "stick", "start")).toEqual([3, 6, 9]);
  });

  it("with room for two holds the third", () => {
    // Stun 1-3, 3-5; the third waits until the first is stuck at 6.
    const gates = [gate("stun", { stage: "stick", moment: "end" }, 2)];
    const day = runChecked(planOf(stream(constant(1), 3), line, { gates }));
    expect(passes(day, "stun", "start")).toEqual([1, 3, 6]);
    expect(day.gates[0]!.max).toBe(2);
    // Heads are between the points 1-6, 3-9 and 6-12: one 1-3, two 3-9, one 9-12, in a day of 12 s.
    expect(day.gates[0]!.mean).toBeCloseTo((2 + 2 * 6 + 3) / 12, 12);
  });

  it("may end outside the line: then a head counts until it has left", () => {
    const gates = [gate("stun", { stage: null, moment: "exit" }, 1)];
    const day = runChecked(planOf(stream(constant(1), 2), [...line, station("wash", 4)], { gates }));
    // 1-3, 3-6, 6-10: the second head begins at 10.
    expect(passes(day, "stun", "start")).toEqual([1, 10]);
  });
});

describe("gates inside each other", () => {
  it("each hold their own number of heads", () => {
    // Heads at 1 ... 5; a and b take 1 s, c 4 s. Inner gate: one head from b's start to c's start; outer: three from a's
    // start to c's end. c takes them at 3, 7, 11, 15, 19. b: head 2 at 3, waits for c until 7: so head 3 begins b at 7,
    // head 4 at 11, head 5 at 15. a: heads 1 to 3 at 1, 2, 3; then one for every head that leaves c: 7, 11.
    const line = [
      station("a", 1, { buffer: Infinity }),
      station("b", 1, { buffer: Infinity }),
      station("c", 4, { buffer: Infinity }),
    ];
    const gates = [
      gate("a", { stage: "c", moment: "end" }, 3, "outer"),
      gate("b", { stage: "c", moment: "start" }, 1, "inner"),
    ];
    const day = runChecked(planOf(stream(constant(1), 5), line, { gates }));
    expect(passes(day, "a", "start")).toEqual([1, 2, 3, 7, 11]);
    expect(passes(day, "b", "start")).toEqual([2, 3, 7, 11, 15]);
    expect(passes(day, "c", "start")).toEqual([3, 7, 11, 15, 19]);
    expect(day.gates.map(({ name, max }) => [name, max])).toEqual([
      ["outer", 3],
      ["inner", 1],
    ]);
    // a holds head 4 from 4 to 7 and head 5 from 8 to 11; b head 3 from 4, head 4 from 8 and head 5 from 12, 3 s, 3 s, 3 s.
    expect(day.stages.map((stage) => stage.heldSeconds)).toEqual([6, 9, 0]);
  });

  it("from the same stage both have to be open", () => {
    const line = [station("a", 1, { buffer: Infinity }), station("b", 2), station("c", 5, { buffer: Infinity })];
    const gates = [
      gate("a", { stage: "b", moment: "end" }, 1, "short"),
      gate("a", { stage: "c", moment: "end" }, 2, "long"),
    ];
    // Head 1: a 1-2, b 2-4, c 4-9. Head 2 (short gate open at 4): a 4-5, b 5-7, c 9-14. Head 3: short gate open at 7, long
    // gate at 9: a 9-10.
    const day = runChecked(planOf(stream(constant(1), 3), line, { gates }));
    expect(passes(day, "a", "start")).toEqual([1, 4, 9]);
  });
});

describe("a head taken off between the points of a gate", () => {
  it("leaves the gate with the line", () => {
    // a 1-2, b 2-4 where it is condemned: the next head begins at 4.
    const line = [
      station("a", 1, { buffer: Infinity }),
      station("b", 2, { removals: [{ as: "condemned", share: 1 }] }),
      station("c", 1),
    ];
    const gates = [gate("a", { stage: "c", moment: "end" }, 1)];
    const day = runChecked(planOf(stream(constant(1), 3), line, { gates }));
    expect(passes(day, "a", "start")).toEqual([1, 4, 7]);
    expect(day.heads.out).toEqual({ carcass: 0, condemned: 3 });
  });

  it("stays in it while it is at trim", () => {
    // a 1-2, b 2-3, trim 3-13, c 13-14: head 2 begins at 14.
    const line = [
      station("a", 1, { buffer: Infinity }),
      station("b", 1, { diversions: [{ to: "trim", share: 1 }] }),
      station("c", 1),
      station("trim", 10, { offLine: true, next: "c", buffer: Infinity }),
    ];
    const gates = [gate("a", { stage: "c", moment: "end" }, 1)];
    const day = runChecked(planOf(stream(constant(1), 2), line, { gates }));
    expect(passes(day, "a", "start")).toEqual([1, 14]);
  });
});

describe("a held stage", () => {
  it("leaves its people free for other work", () => {
    // One person for a and c. Head 1: a 1-3; b (a machine, 4 s) 3-7; the gate holds a, so nobody is bound there; c 7-9 and
    // the gate opens at 9.
    const line = [manual("a", 2, "crew", { buffer: Infinity }), station("b", 4), manual("c", 2, "crew")];
    const gates = [gate("a", { stage: "c", moment: "end" }, 1)];
    const day = runChecked(planOf(stream(constant(1), 2), line, { crews: [crew("crew", 1)], gates }));
    expect(passes(day, "a", "start")).toEqual([1, 9]);
    expect(passes(day, "c", "start")).toEqual([7, 15]);
    expect(day.crews[0]!.busySeconds).toBe(8);
  });

  it("is on break, not blocked, while its crew is away", () => {
    // The gate is shut 1-12 (a 1-2, b 2-12); the crew is away 5-30: blocked 2-5, on break 5-30, work 30-31.
    const line = [manual("a", 1, "crew", { buffer: Infinity }), station("b", 10)];
    const gates = [gate("a", { stage: "b", moment: "end" }, 1)];
    const plan = withDay(planOf(stream(constant(1), 2), line, { crews: [crew("crew", 1)], gates }), {
      breaks: [pause("tea", 5, 25, { crews: ["crew"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "a", "start")).toEqual([1, 30]);
    expect(secondsIn(day, "a")).toMatchObject({ blocked: 3, "on break": 25 });
  });
});
