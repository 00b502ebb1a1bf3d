import { describe, expect, it } from "vitest";
import { killLineKeys } from "../../../../sim/day/observations/index.ts";
import { decisionKeys } from "../../../../sim/days/decision/index.ts";
import { DaySimulator } from "../../../../sim/days/run/daySimulator.ts";
import { daySource } from "../../../../sim/days/run/daySource.ts";
import { compileLine, measure, runDay } from "../../../../sim/index.ts";
import { SLOWER_PLAN, threeVariants } from "../../../support/threeVariants.ts";

const SOURCE = daySource(threeVariants({ responses: ["carcasses", "headsPerHour"] }), "exact", false);

describe("DaySimulator", () => {
  it("gives the kept measures of the day with that seed and replication, whatever was simulated before", () => {
    const simulator = new DaySimulator(SOURCE);
    const draws = { seed: "seed", replication: 2, killStops: true };
    const day = measure(runDay(compileLine(SLOWER_PLAN), draws), SLOWER_PLAN);
    const kept = [...decisionKeys(SLOWER_PLAN), ...killLineKeys(SLOWER_PLAN)];
    const asked = [...new Set(["carcasses", "headsPerHour", "unfinished", ...kept])];
    const direct = asked.map((key) => day[key]);
    expect(simulator.simulate(1, 2).values).toEqual(direct);
    simulator.simulate(1, 5);
    simulator.simulate(0, 2);
    expect(simulator.simulate(1, 2)).toEqual({ variant: 1, replication: 2, values: direct, day: null });
  });

  it("keeps the day of replication 0, with its traces", () => {
    expect(new DaySimulator(SOURCE).simulate(0, 0).day!.traces!.out.kind).toBe("exact");
  });

  it("keeps the lines of the last 64 variants, and gives the same days after it let one go", () => {
    let looked = 0;
    const watched = Object.defineProperty({ ...SLOWER_PLAN }, "line", {
      get: () => {
        looked += 1;
        return SLOWER_PLAN.line;
      },
    });
    const plans = [watched, ...new Array(64).fill(SLOWER_PLAN)];
    const simulator = new DaySimulator({ ...SOURCE, plans, traces: "none" });
    const looks = (variant: number) => {
      const before = looked;
      const { values } = simulator.simulate(variant, 1);
      return { values, looks: looked - before };
    };
    const first = looks(0);
    for (let variant = 1; variant < 64; variant++) looks(variant);
    const kept = looks(0);
    for (let variant = 1; variant < 65; variant++) looks(variant);
    const again = looks(0);
    expect([kept.values, again.values]).toEqual([first.values, first.values]);
    expect(kept.looks).toBeLessThan(first.looks);
    expect(again.looks).toBe(first.looks);
  });

  it("has null for a response that the variant does not know", () => {
    const simulator = new DaySimulator({ ...SOURCE, keys: ["carcasses", "of another plan"] });
    expect(simulator.simulate(0, 1).values[1]).toBeNull();
  });

  it("simulates a batch day by day, stopping before a day when told to", () => {
    const simulator = new DaySimulator(SOURCE);
    let asked = 0;
    const { days, failed } = simulator.simulateBatch({ variant: 0, first: 3, count: 5 }, () => ++asked > 2);
    expect(days.map(({ replication }) => replication)).toEqual([3, 4]);
    expect(failed).toEqual([]);
  });

  it("tells of each day that fails, with its message, and goes on", () => {
    const broken = { ...SOURCE, plans: [{ ...SLOWER_PLAN, line: null as never }] };
    const { days, failed } = new DaySimulator(broken).simulateBatch({ variant: 0, first: 0, count: 2 });
    expect(days).toEqual([]);
    expect(failed.map(({ replication }) => replication)).toEqual([0, 1]);
    expect(failed[0]!.message).toMatch(/null/);
  });
});
