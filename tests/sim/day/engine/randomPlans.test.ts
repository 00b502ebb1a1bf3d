import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/plan.ts";
import { type DayRecord, runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { randomPlan } from "../../../support/randomPlans.ts";

/*
 * The property tests draw their plans from tests/support/randomPlans.ts. They mean something only if what they are to
 * hold for really happens there: so every feature is counted over the days of the conservation test's own seed.
 */

const sum = (numbers: number[]) => numbers.reduce((total, number) => total + number, 0);
const perStage = (count: (stage: DayRecord["stages"][number]) => number) => (day: DayRecord) =>
  sum(day.stages.map(count));
const statesOf = (state: number) => perStage((stage) => stage.stateSeconds[state] ?? 0);

/** What happens in a day, by its name; 0 when it does not. */
const HAPPENINGS: Record<string, (day: DayRecord, plan: Plan) => number> = {
  "carcasses out": (day) => day.heads.out.carcass ?? 0,
  "heads condemned": (day) => day.heads.out.condemned ?? 0,
  "heads dead on arrival": (day) => day.heads.out["dead on arrival"] ?? 0,
  "heads turned away": (day) => day.heads.turnedAway,
  "heads left in lairage": (day) => day.heads.inLairage,
  "heads diverted": perStage((stage) => stage.diverted),
  "heads unworked": perStage((stage) => stage.unworked),
  "heads that left a window unfinished": perStage((stage) => (stage.kind === "chain station" ? stage.unfinished : 0)),
  "heads taken off a machine that broke": perStage((stage) => (stage.kind === "station" ? stage.unfinished : 0)),
  stops: perStage((stage) => stage.stops),
  "stops of several stages at once": (day) => sum(day.sharedBreakdowns.map(({ stops }) => stops)),
  "shared breakdowns that need somebody": (day, plan) =>
    sum(day.sharedBreakdowns.map(({ stops }, row) => (plan.sharedBreakdowns[row]!.crew === null ? 0 : stops))),
  "heads at a station whose speed goes by the hour": (day, plan) =>
    sum(plan.line.map((stage) => (stage.kind === "station" && stage.pace.length > 0 ? processed(day, stage.name) : 0))),
  "heads on a chain whose speed changes while it is watched": (day, plan) =>
    sum(
      plan.line.map((stage) =>
        stage.kind === "chain" && stage.pace.some(({ fromSeconds }) => fromSeconds > 0)
          ? processed(day, stage.name)
          : 0,
      ),
    ),
  "lorries that did not come": (day) => day.loads.filter(({ arrivedSeconds }) => arrivedSeconds === null).length,
  "heads damaged, by their weight or their time": (day) => day.heads.out.damaged ?? 0,
  "seconds blocked": statesOf(1),
  "seconds without crew": statesOf(3),
  "seconds down": statesOf(4),
  "seconds on break": statesOf(5),
  "seconds held": perStage((stage) => stage.heldSeconds),
  "gates full": (day) => day.gates.filter((gate) => gate.max === gate.atMost).length,
  "a safe stop in the plan": (day) => day.gates.filter((gate) => gate.name === "safe stop" && gate.max > 0).length,
  "seconds held so that no stunned head waits": (day, plan) =>
    plan.stunned?.hold && plan.gates.length === 0 && plan.day.safeStop === null
      ? day.stages.find(({ name }) => name === "s0")!.heldSeconds
      : 0,
  "heads stunned again": (day) => day.stunned?.stunnedAgain ?? 0,
  "heads stuck where they were": (day) => day.stunned?.stuckThere ?? 0,
  "kilograms spilled": (day) => sum(day.vessels.map((vessel) => vessel.spilledKg)),
  "vessels emptied": (day) => sum(day.vessels.map((vessel) => vessel.emptied)),
  "vessels full that stop their stages": (day, plan) =>
    sum(day.vessels.map((vessel, index) => (plan.vessels[index]!.whenFull === "stop" ? vessel.fullSeconds : 0))),
  "shackles passed": (day) => sum(day.chains.map((chain) => chain.shackles)),
  gaps: (day) => sum(day.chains.map((chain) => chain.gaps)),
  "shackles missing": (day) => sum(day.chains.map((chain) => chain.missingShackles)),
  "chain down": (day) => sum(day.chains.map((chain) => chain.standSeconds.down)),
  "chain stopped for an unfinished head": (day) => sum(day.chains.map((chain) => chain.standSeconds.unfinished)),
  "chain with nowhere to unload": (day) => sum(day.chains.map((chain) => chain.standSeconds.unloading)),
  "chain paused": (day) => sum(day.chains.map((chain) => chain.standSeconds.pause)),
  "lorries that left": (day) => day.loads.filter((load) => load.leftSeconds !== null).length,
  "lorries that left with empty crates": (day, plan) =>
    (plan.liveHandling?.back.length ?? 0) > 0 ? day.loads.filter((load) => load.leftSeconds !== null).length : 0,
  "crates worked on": perStage((stage) => (stage.kind === "crates" ? stage.processed : 0)),
  "heads on hooks of four": (day, plan) =>
    sum(
      plan.line.map((stage) => (stage.kind === "dwell" && stage.headsPerHook === 4 ? processed(day, stage.name) : 0)),
    ),
  "heads through a second stage by its crew of two": (day, plan) =>
    sum(
      plan.line.map((stage) => (stage.kind === "station" && stage.crews.length === 2 ? processed(day, stage.name) : 0)),
    ),
  "people absent": (day) => sum(day.crews.map(({ absent }) => absent[0]!)),
  "carcasses there at the start": (day) => day.heads.fromBefore?.onLine ?? 0,
  "animals in lairage at the start": (day) => day.heads.fromBefore?.inLairage ?? 0,
  "heads held in a dwell": (_, plan) =>
    plan.supply.kind === "loads" && plan.supply.loads[0]!.held !== undefined ? 1 : 0,
  "people who step in": (day) => day.crews.filter(({ helpers }) => helpers !== undefined).length,
  "repairers at work": (day) => day.crews.find((crew) => crew.name === "maintenance")?.busySeconds ?? 0,
  "people who walk": (_, plan) => plan.crews.filter((crew) => crew.walkSeconds > 0).length,
  "by-products in kilograms": (day) => sum(Object.values(day.masses.byProductsKg)),
};

function processed(day: DayRecord, name: string): number {
  return day.stages.find((stage) => stage.name === name)?.processed ?? 0;
}

describe("the random plans of the property tests", () => {
  const days = fc.sample(fc.tuple(randomPlan, fc.nat()), { seed: 2026, numRuns: 400 }).map(([plan, replication]) => ({
    plan,
    day: runDay(compileLine(plan), { seed: "conservation", replication }),
  }));

  it.each(Object.keys(HAPPENINGS))("have %s on five days or more", (name) => {
    const times = days.filter(({ day, plan }) => HAPPENINGS[name]!(day, plan) > 0).length;
    expect(times).toBeGreaterThanOrEqual(5);
  });

  it("are days that end by themselves in the main", () => {
    const finished = days.filter(({ day }) => day.status === "finished").length;
    expect(finished).toBeGreaterThan(0.8 * days.length);
  });
});
