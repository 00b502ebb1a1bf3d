import { describe, expect, it } from "vitest";
import type { Load, Plan } from "../../../../sim/asked/plan/plan.ts";
import { type DayRecord, runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { estimateDay } from "../../../../sim/questions/estimate/index.ts";
import { handling, load } from "../../../support/loads.ts";
import { crateStep, exponential, planOf, station } from "../../../support/plans.ts";
import { runChecked } from "../../../support/timeline.ts";

const varied = (name: string, at: number, changes: Partial<Load> = {}) =>
  load(name, at, 3, 4, {
    ...{ delay: exponential(60), deadOnArrivalShare: 0.1, liveWeightKg: { family: "uniform", min: 2, max: 3 } },
    ...changes,
  });
const plant = (loads: Load[]): Plan =>
  planOf({ kind: "loads", loads }, [station("hang", exponential(5)), station("cut", exponential(4), { buffer: 3 })], {
    liveHandling: handling([crateStep("unloading", exponential(9)), crateStep("crate lift", 3)]),
  });
const MAYBE = plant([varied("early", 0), varied("middle", 100, { comesShare: 0.5 }), varied("late", 200)]);
const day = (plan: Plan, replication: number) => runChecked(plan, { replication, perHead: false, binding: true });
const cameAt = (record: DayRecord, index: number) => record.loads[index]!.arrivedSeconds;

describe("a lorry that may not come", () => {
  const days = Array.from({ length: 12 }, (_, replication) => day(MAYBE, replication));
  const came = days.filter((record) => cameAt(record, 1) !== null);
  const away = days.filter((record) => cameAt(record, 1) === null);

  it("comes on some days and not on others", () => {
    expect(came.length).toBeGreaterThan(0);
    expect(away.length).toBeGreaterThan(0);
  });

  it("leaves a day on which it comes as if it always came, bit for bit", () => {
    const sure = plant([varied("early", 0), varied("middle", 100), varied("late", 200)]);
    for (const record of came) expect(record).toEqual(day(sure, record.replication));
  });

  it("leaves a day on which it stays away as if it were not in the plan, bit for bit", () => {
    const without = plant([varied("early", 0), varied("late", 200)]);
    for (const { loads, ...record } of away) {
      const { loads: two, ...plain } = day(without, record.replication);
      expect(record).toEqual(plain);
      expect([loads[0], loads[2]]).toEqual(two);
      expect(loads[1]).toEqual({
        ...{ name: "middle", heads: 12, crates: 3, dueSeconds: 100, arrivedSeconds: null },
        ...{ unloadedSeconds: null, emptiedSeconds: null, washedSeconds: null, leftSeconds: null },
      });
    }
  });

  it("is counted, with its heads, and no time is taken from it", () => {
    const values = measure(away[0]!, MAYBE);
    expect(values).toMatchObject({ "lorry.notCome": 1, "lorry.notCome.heads": 12 });
    expect(values["lorry.emptied.max"]).toBeGreaterThan(0);
    expect(measure(came[0]!, MAYBE)).toMatchObject({ "lorry.notCome": 0, "lorry.notCome.heads": 0 });
    expect(measure(away[0]!, plant([varied("early", 0)]))).not.toHaveProperty("lorry.notCome");
  });

  it("may be the only one: then the day ends at its start, with nothing done", () => {
    const lone = plant([varied("early", 50, { comesShare: 0.01 })]);
    const record = day(lone, 0);
    expect(record).toMatchObject({ status: "finished", finishSeconds: 0, heads: { arrived: 0, hung: 0, onLine: 0 } });
    expect(record.binding!.day).toEqual([]);
  });

  it("comes as often as its chance says, each by itself: binomial (Bernoulli trials), error probability 0.001 a check", () => {
    const [loads, share, numDays] = [8, 0.7, 2000];
    const names = Array.from({ length: loads }, (_, index) => load(`l${index}`, index, 1, 1, { comesShare: share }));
    const line = compileLine(plant(names));
    const counts = Array.from({ length: numDays }, (_, replication) => {
      const { loads: all } = runDay(line, { seed: "binomial", replication });
      return all.filter(({ arrivedSeconds }) => arrivedSeconds !== null).length;
    });
    const z = (observed: number, trials: number, p: number) =>
      (observed - trials * p) / Math.sqrt(trials * p * (1 - p));
    const sum = counts.reduce((total, count) => total + count, 0);
    expect(Math.abs(z(sum, numDays * loads, share))).toBeLessThan(3.29);
    const all = counts.filter((count) => count === loads).length;
    expect(Math.abs(z(all, numDays, share ** loads))).toBeLessThan(3.29);
    const five = counts.filter((count) => count === 5).length;
    expect(Math.abs(z(five, numDays, 56 * share ** 5 * (1 - share) ** 3))).toBeLessThan(3.29);
  });

  it("counts in the estimate with the heads that it brings on the average", () => {
    const carcasses = (plan: Plan) => estimateDay(plan).carcasses;
    const clean = (comesShare: number) => plant([load("a", 0, 50, 10), load("b", 0, 50, 10, { comesShare })]);
    expect(carcasses(clean(1))).toBeCloseTo(1000, 6);
    expect(carcasses(clean(0.4))).toBeCloseTo(700, 6);
  });
});
