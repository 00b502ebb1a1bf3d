import { expect, it } from "vitest";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { examplePlan } from "../../../support/exampleDay.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("reads occupation and yield of the crew", () => {
  expect(values).toMatchObject({ "crew.dressing.occupation": 0.75, carcassesPerPersonHour: 120 });
});

it("tells of each crew where its work in hand lay: the hours add up to its share of the time on duty", () => {
  const plan = examplePlan("ferncote");
  const day = runDay(compileLine(plan), { seed: "crew hours", replication: 0 });
  const measured = measure(day, plan);
  for (const { name } of plan.crews) {
    const hours = Object.entries(measured)
      .filter(([key]) => key.startsWith(`crew.${name}.hours.`) || key === `crew.${name}.jobHours`)
      .reduce((sum, [, value]) => sum + value!, 0);
    const { presentSeconds } = day.crews.find((crew) => crew.name === name)!;
    expect(hours, name).toBeGreaterThan(0);
    expect((hours * 3600) / presentSeconds, name).toBeCloseTo(measured[`crew.${name}.occupation`]!, 9);
  }
});

it("follows from the station's own shares, by the stated conversion: evisceration's crew has no other work", () => {
  const plan = examplePlan("ferncote");
  const day = runDay(compileLine(plan), { seed: "crew hours", replication: 0 });
  const measured = measure(day, plan);
  const { ownTime, positions } = day.stages.find(({ name }) => name === "evisceration")!;
  const span = (positions * (ownTime!.toSeconds - ownTime!.fromSeconds)) / 3600;
  const worked = measured["working.evisceration"]! * (1 - measured["onBreak.evisceration"]!) * span;
  expect(measured["crew.evisceration.hours.evisceration"]).toBeCloseTo(worked, 9);
});

it("the busiest station is busy by its own time, while by the clock the chiller's night is in its day", () => {
  const plan = examplePlan("ferncote");
  const measured = measure(runDay(compileLine(plan), { seed: "crew hours", replication: 0 }), plan);
  expect(measured["working.evisceration"]).toBeGreaterThan(0.85);
  expect(measured["starved.evisceration"]).toBeLessThan(0.1);
  expect(measured["working.evisceration.byClock"]).toBeLessThan(0.65);
  expect(measured["starved.evisceration.byClock"]).toBeGreaterThan(0.25);
});
