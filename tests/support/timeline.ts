import { MOMENTS, type Moment, type Plan } from "../../sim/asked/plan/plan.ts";
import { type DayOptions, type DayRecord, runDay } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";

/** Runs a plan with conservation checked after every event. */
export function runChecked(plan: Plan, options: Partial<DayOptions> = {}): DayRecord {
  return runDay(compileLine(plan), { seed: "test", replication: 0, check: true, perHead: true, ...options });
}

/** When each head (in hanging order) passed a moment of a stage; NaN where it never did. */
export function passes(day: DayRecord, stage: string, moment: Moment): number[] {
  const table = day.perHead!;
  const column = day.stages.findIndex((record) => record.name === stage);
  return Array.from(
    { length: table.heads },
    (_, head) => table.times[(head * day.stages.length + column) * MOMENTS.length + MOMENTS.indexOf(moment)]!,
  );
}

/** Position-seconds of a stage by state name, zeros left out. */
export function secondsIn(day: DayRecord, stage: string): Record<string, number> {
  const states = ["working", "blocked", "starved", "no crew", "down", "on break"];
  const record = day.stages.find((each) => each.name === stage)!;
  return Object.fromEntries(
    states.flatMap((state, index) => (record.stateSeconds[index]! > 0 ? [[state, record.stateSeconds[index]!]] : [])),
  );
}
