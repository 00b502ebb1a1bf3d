import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan, Stage } from "../../../../../sim/asked/plan/plan.ts";
import { type DaysOptions, type DaysRecord, runDay, runDays } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { examplePlan } from "../../../../support/exampleDay.ts";
import { randomPlan } from "../../../../support/randomPlans.ts";

const DAY = 86_400;

function daysOf(plans: readonly Plan[], replication = 0, options: Partial<DaysOptions> = {}): DaysRecord {
  const days = plans.map((plan, number) => ({ line: compileLine(plan), startSeconds: number * DAY, number }));
  return runDays(days, { seed: "days", replication, calendarDays: plans.length, check: true, ...options });
}

function withoutVessels(stage: Stage): Stage {
  return { ...stage, byProducts: stage.byProducts.map((product) => ({ ...product, vessel: null })) };
}

/** Hanging ends after a while, and nobody takes anything out of dwell stages after another: so all that can stay does. */
function cutShort(plan: Plan, hangingEnds: number, closes: number): Plan {
  const overnight = plan.line
    .filter(({ kind }) => kind === "dwell")
    .map(({ name }) => ({ stage: name, untilSeconds: closes }));
  return { ...plan, day: { ...plan.day, closing: { rule: "stop hanging", atSeconds: hangingEnds }, overnight } };
}

/** With what days add to a plan: lots and changeovers, learning, replacement by age. */
function withParts(plan: Plan): Plan {
  const { supply } = plan;
  const loads =
    supply.kind !== "loads"
      ? []
      : supply.loads.map((load, row) => ({ ...load, lot: row % 3 === 0 ? "one farm" : load.name }));
  const line = plan.line.map((stage, row): Stage => {
    if (stage.kind !== "station") return stage;
    const breakdowns = stage.breakdowns.map((each) => ({ ...each, replaced: { afterSeconds: 40, takesSeconds: 3 } }));
    const worked = { ...stage, breakdowns };
    return row % 2 === 0
      ? { ...worked, changeoverSeconds: 4 }
      : { ...worked, learning: { rate: 0.9, known: 32, done: 2 } };
  });
  return { ...plan, supply: supply.kind === "loads" ? { ...supply, loads } : supply, line };
}

describe("days one after another", () => {
  it("of which nothing stays are the days alone, to the bit", () => {
    for (const name of ["ferncote", "sallowfield-compact", "tavelmoss-chains"]) {
      // What stays even where no animal does: what is in vessels, crates, and how long machines have run.
      const plan = { ...examplePlan(name), vessels: [], line: examplePlan(name).line.map(withoutVessels) };
      const { days, status } = daysOf([plan, plan], 3, { machinesAsNew: true, check: false });
      expect(status).toBe("finished");
      for (const [row, day] of days.entries()) {
        expect(day).toEqual(runDay(compileLine(plan), { seed: "days", replication: 6 + row }));
      }
    }
  });

  it("lose and double nothing, whatever stays overnight, at every event of 120 random plans (seed 2027)", () => {
    const kept = { crated: 0, onLine: 0, plans: 0, changeovers: 0, replacements: 0 };
    const property = (plan: Plan, replication: number, hangingEnds: number, closes: number) => {
      fc.pre(plan.supply.kind !== "saturated");
      const whole = withParts(plan);
      const short = cutShort(whole, hangingEnds, closes);
      const { days, status } = daysOf([short, short, whole], replication);
      for (const [row, day] of days.entries()) {
        const { arrived, fromBefore, out, turnedAway, inLairage, onLine } = day.heads;
        const left = Object.values(out).reduce((sum, heads) => sum + heads, 0) + turnedAway + inLairage + onLine;
        expect(left).toBe(arrived + fromBefore.inLairage + fromBefore.onLine);
        kept.changeovers += day.stages.reduce((sum, { changeovers = 0 }) => sum + changeovers, 0);
        kept.replacements += day.stages.reduce((sum, { replacements = 0 }) => sum + replacements, 0);
        if (row === 0) continue;
        const before = days[row - 1]!.heads;
        expect(fromBefore.inLairage).toBe(before.inLairage);
        expect(fromBefore.onLine).toBe(before.onLine);
        kept.crated += fromBefore.inLairage;
        kept.onLine += fromBefore.onLine;
      }
      if (status === "finished") kept.plans++;
    };
    const hanging = { min: 5, max: 90 };
    const closing = { min: 1, max: 30 };
    fc.assert(fc.property(randomPlan, fc.nat(), fc.integer(hanging), fc.integer(closing), property), {
      seed: 2027,
      numRuns: 120,
    });
    // What is to hold happens: otherwise the property says nothing.
    expect(kept.plans).toBeGreaterThan(60);
    expect(kept.crated).toBeGreaterThan(200);
    expect(kept.onLine).toBeGreaterThan(30);
    expect(kept.changeovers).toBeGreaterThan(50);
    expect(kept.replacements).toBeGreaterThan(50);
  });
});
