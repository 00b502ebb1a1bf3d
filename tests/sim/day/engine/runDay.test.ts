import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { advance, recordOf, runDay, startDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { constant, exponential, planOf, saturated, station, stream } from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

describe("runDay", () => {
  it("gives the same record twice for the same plan, seed and replication, to the last bit", () => {
    fc.assert(
      fc.property(randomPlan, fc.nat({ max: 9 }), (plan, replication) => {
        const run = () => runDay(compileLine(plan), { seed: "same", replication, traces: "exact", perHead: true });
        expect(run()).toEqual(run());
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it("gives another day for another seed or replication", () => {
    const line = compileLine(planOf(stream(exponential(1), 50), [station("a", exponential(0.8))]));
    const finish = (seed: string, replication: number) => runDay(line, { seed, replication }).finishSeconds;
    expect(new Set([finish("a", 0), finish("a", 1), finish("b", 0)]).size).toBe(3);
  });

  it("is the same whether traces and checks are on or off", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const line = compileLine(plan);
        const bare = runDay(line, { seed: "bare", replication: 0 });
        const watched = runDay(line, { seed: "bare", replication: 0, traces: "binned", check: true, perHead: true });
        expect({ ...watched, traces: null, perHead: null }).toEqual(bare);
      }),
      { seed: 4, numRuns: 100 },
    );
  });

  it("is the same when it is advanced in small steps", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const line = compileLine(plan);
        const whole = runDay(line, { seed: "steps", replication: 0 });
        const day = startDay(line, { seed: "steps", replication: 0 });
        let status = advance(day, 0);
        for (let until = 7; status === "running" && until < 8_000; until += 7) status = advance(day, until);
        fc.pre(status === "finished");
        expect(recordOf(day, "finished")).toEqual(whole);
      }),
      { seed: 6, numRuns: 40 },
    );
  });

  it("leaves every other stage's draws unchanged when one stage changes (common random numbers)", () => {
    // Unlimited buffers keep the order of heads: work times are ends less starts, head by head.
    const line = (cycle: number) => [
      station("a", exponential(1), { buffer: Infinity }),
      station("b", exponential(cycle), { buffer: Infinity }),
      station("c", exponential(1), { buffer: Infinity }),
    ];
    const workAt = (cycle: number, stage: string) => {
      const day = runChecked(planOf(stream(constant(2), 100), line(cycle)));
      const starts = passes(day, stage, "start");
      return passes(day, stage, "end").map((end, head) => end - starts[head]!);
    };
    for (const stage of ["a", "c"]) {
      const [before, after] = [workAt(1, stage), workAt(1.7, stage)];
      after.forEach((work, head) => {
        expect(work).toBeCloseTo(before[head]!, 9);
      });
    }
    const [before, after] = [workAt(1, "b"), workAt(1.7, "b")];
    after.forEach((work, head) => {
      expect(work).toBeCloseTo(1.7 * before[head]!, 9);
    });
  });

  it("leaves the draws unchanged when a stage is put in between", () => {
    const unlimited = { buffer: Infinity };
    const first = station("a", exponential(1), unlimited);
    const last = station("c", exponential(1), unlimited);
    const short = runChecked(planOf(stream(constant(2), 60), [first, last]));
    const long = runChecked(planOf(stream(constant(2), 60), [first, station("new", 0, unlimited), last]));
    expect(passes(long, "c", "end")).toEqual(passes(short, "c", "end"));
  });

  it("mirrors its draws when antithetic: long work becomes short", () => {
    const line = compileLine(planOf(stream(constant(50), 200), [station("a", { family: "uniform", min: 1, max: 3 })]));
    const mean = (antithetic: boolean) => runDay(line, { seed: "anti", replication: 0, antithetic }).timeInSystem.mean;
    expect(mean(false) + mean(true)).toBeCloseTo(4, 12);
  });

  it("forgets the warm-up: counts and times start afresh, what is present stays", () => {
    const line = compileLine(planOf(saturated(100), [station("a", 2), station("b", 3)]));
    const day = runDay(line, { seed: "x", replication: 0, warmUpHeads: 10 });
    // Head n leaves at 2 + 3n: the warm-up ends at 32, 100 further carcasses are out at 332.
    expect(day.watchedFromSeconds).toBe(32);
    expect(day.heads.out.carcass).toBe(100);
    expect(day.finishSeconds).toBe(332);
    expect(day.stages[1]!.stateSeconds).toEqual([300, 0, 0, 0, 0, 0]);
  });
});
