import { describe, expect, it } from "vitest";
import { compileLine, measure, runDay } from "../../../sim/index.ts";
import { DaySimulator } from "../../../sim/run/daySimulator.ts";
import { readSmallPlan } from "../../support/readSmallPlan.ts";

const PLAN = readSmallPlan();

describe("DaySimulator", () => {
  const simulator = new DaySimulator([PLAN], "s", false);

  it("gives the measures of the day with that seed and replication, whatever was simulated before", () => {
    const direct = measure(runDay(compileLine(PLAN), { seed: "s", replication: 2 }), PLAN);
    const task = { variant: 0, replication: 2, traces: "none" as const, keepDay: false };
    expect(simulator.simulate(task).values).toEqual(direct);
    simulator.simulate({ ...task, replication: 5 });
    expect(simulator.simulate(task).values).toEqual(direct);
  });

  it("keeps the day only where the task says so", () => {
    const task = { variant: 0, replication: 0, traces: "none" as const, keepDay: false };
    expect(simulator.simulate(task).day).toBeNull();
    expect(simulator.simulate({ ...task, keepDay: true }).day!.replication).toBe(0);
  });
});
