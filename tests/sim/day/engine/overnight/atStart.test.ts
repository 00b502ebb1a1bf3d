import { describe, expect, it } from "vitest";
import type { AtStart, Plan } from "../../../../../sim/asked/plan/plan.ts";
import { runDays } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { handling, load } from "../../../../support/loads.ts";
import { constant, crateStep, dwell, planOf, station, stream } from "../../../../support/plans.ts";
import { passes, runChecked } from "../../../../support/timeline.ts";

const liveWeightKg = constant(2.5);
const hanging = (heads: number, forSeconds: number, lot: string | null = null) => ({
  ...{ in: "chiller", heads, forSeconds, lot, liveWeightKg, leftShare: 0.5 },
});
const begins = (plan: Plan, atStart: Partial<AtStart>): Plan => ({
  ...plan,
  atStart: { crates: [], carcasses: [], ...atStart },
});

describe("carcasses that hang in the chiller when the day begins", () => {
  // A head every 10 s, killed in 1 s, chilled 100 s, packed in 5 s.
  const line = [station("kill", 1), dwell("chiller", 100, Infinity), station("packing", 5, { buffer: Infinity })];
  const heads = (number: number) => planOf(stream(constant(10), number), line);

  it("make the day that a day before makes which leaves the same", () => {
    // The day before: hung at 11, 21, 31, 41; two are packed by 125, the others' time is up at 131 and 141.
    const before = heads(4);
    const closed = { ...before, day: { ...before.day, overnight: [{ stage: "chiller", untilSeconds: 125 }] } };
    const days = [closed, heads(2)].map((plan, number) => ({
      ...{ line: compileLine(plan), startSeconds: number * 1000, number },
    }));
    const always = { seed: "test", replication: 0, calendarDays: 2, check: true, perHead: true };
    const tomorrow = runDays(days, always).days[1]!;
    const alone = runChecked(begins(heads(2), { carcasses: [hanging(1, 969), hanging(1, 959)] }));
    expect(passes(alone, "packing", "start")).toEqual([0, 5, 111, 121]);
    expect(passes(alone, "chiller", "end")).toEqual([131 - 1000, 141 - 1000, 111, 121]);
    expect(alone.stages).toEqual(tomorrow.stages);
    expect(alone.heads).toEqual(tomorrow.heads);
    // Half of 2.5 kg each, and the day's own whole.
    expect(alone.masses.outKg.carcass).toBe(2 * 1.25 + 2 * 2.5);
  });

  it("go on chilling for what is left of their time", () => {
    // 60 of 100 s are over: ready at 40; the day's own at 111.
    expect(passes(runChecked(begins(heads(1), { carcasses: [hanging(2, 60)] })), "packing", "start")).toEqual([
      40, 45, 111,
    ]);
  });

  it("are told by lot from the start to the last one out", () => {
    const plan = begins(heads(1), { carcasses: [hanging(2, 60, "Alder")] });
    const options = { seed: "test", replication: 0, calendarDays: 1, check: true };
    const [lot] = runDays([{ line: compileLine(plan), startSeconds: 0, number: 0 }], options).lots;
    expect(lot).toMatchObject({ name: "Alder", hung: 2, liveKg: 5, lastOutSeconds: 50, out: { carcass: 2 } });
  });
});

describe("crates that stand in lairage when the day begins", () => {
  const limit = {
    name: "wait",
    ...{ from: { stage: null, moment: "entry" as const }, to: { stage: "hanging", moment: "start" as const } },
    ...{ minSeconds: null, maxSeconds: 505, source: "" },
  };
  const steps = [crateStep("unloading", 10), crateStep("feeding", 2, { places: 9 })];
  const plan = planOf({ kind: "loads", loads: [load("lorry", 100, 1, 2)] }, [station("hanging", 3)], {
    liveHandling: handling(steps, [], { cratesAtHanging: 2 }),
    limits: [limit],
  });
  const crates = { lot: null, crates: 2, headsPerCrate: 2, forSeconds: 500, liveWeightKg };

  it("are hung first, their animals having waited since they came", () => {
    const day = runChecked(begins(plan, { crates: [crates] }));
    // Fed at 2 and 4: hung from 2, 5, 8, 11; the lorry's crate is off at 110 and fed at 112.
    expect(passes(day, "hanging", "start")).toEqual([2, 5, 8, 11, 112, 115]);
    expect(day.limits[0]!.tally.max).toBe(511);
    // Beyond 505 s: those of 8 and 11.
    expect(day.limits[0]!.beyond).toBe(2);
    expect(day.heads).toMatchObject({ arrived: 2, fromBefore: { inLairage: 4, onLine: 0 }, out: { carcass: 6 } });
  });
});
