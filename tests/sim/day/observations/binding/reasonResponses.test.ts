import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runDay } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import {
  accountedSeconds,
  bindingKeys,
  measure,
  needsBinding,
  reasonCells,
  reasonKey,
} from "../../../../../sim/day/observations/index.ts";
import { randomPlan } from "../../../../support/randomPlans.ts";

describe("what the end of work was owed to", () => {
  it("adds up over the plan's responses, whatever the plan has", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const day = runDay(compileLine(plan), { seed: "bound", replication: 0, binding: true });
        if (day.binding === null) return;
        const measured = measure(day, plan);
        const sum = reasonCells(plan).reduce((total, cell) => total + measured[reasonKey(cell)]!, 0);
        expect(sum).toBeCloseTo(accountedSeconds(day), 5);
        expect(measured["bound.total"]).toBe(accountedSeconds(day));
      }),
      { seed: 62, numRuns: 300 },
    );
  }, 60_000);

  it("has no value on a day that did not look", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const day = runDay(compileLine(plan), { seed: "bound", replication: 0 });
        const measured = measure(day, plan);
        for (const key of bindingKeys(plan)) expect(measured[key], key).toBeNull();
      }),
      { seed: 63, numRuns: 20 },
    );
  });

  it("is known by its key", () => {
    expect(reasonKey({ cause: "planned stop", stage: "stunning", detail: "" })).toBe("bound.plannedStop.stunning");
    expect(reasonKey({ cause: "repair", stage: "skinning", detail: "jam" })).toBe("bound.repair.skinning.jam");
    expect(["bound.work.a", "slope.end.cycle.a", "bottleneck.sole.a", "finish", "boundless"].map(needsBinding)).toEqual(
      [true, true, true, false, false],
    );
  });
});
