import { resolve } from "node:path";
import type { Plan } from "../../sim/asked/plan/index.ts";
import { loadPlan, readInputFile } from "../../sim/cli/inputs.ts";
import type { StudyResults } from "../../sim/days/results/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { weekStudy } from "../../sim/questions/week/index.ts";

const PLAN = resolve(import.meta.dirname, "../../experiments/plans/ferncote.json");

/**
 * A short week of an example plant, quick to simulate: on Monday hanging ends in the morning, so that animals wait over the night; on Tuesday
 * somebody is ill and the shift is too short; then a day without work, and one that begins on a clear line.
 */
const WEEK = {
  begins: "2031-03-17",
  overnight: { chilling: "12:00" },
  days: [
    { name: "Monday", closing: { stopHangingAt: "07:30" } },
    {
      name: "Tuesday",
      ill: { evisceration: 1 },
      shifts: [{ name: "day", from: "06:00", to: "07:30" }],
      closing: { stopHangingAt: "08:30" },
      breaks: [],
    },
    { name: "Wednesday", closed: true },
    { name: "Thursday", closing: { stopHangingAt: "07:00" } },
  ],
  orders: [
    { name: "hotel", day: "Thursday", by: "11:00", carcasses: 500 },
    { name: "rush", day: "Tuesday", by: "10:00", carcasses: 9000 },
  ],
};

export function weekPlan(change: object = {}): Plan {
  const file = readInputFile(PLAN);
  return loadPlan({ ...file, json: { ...(file.json as object), week: { ...WEEK, ...change } } });
}

/** Two simulated weeks of it. `change` takes the place of keys of the week. */
export function exampleWeek(change: object = {}, weeks = 2): Promise<StudyResults> {
  return runStudy(weekStudy(weekPlan(change), "1", weeks), {
    gambrel: "0.0.0",
    command: "gambrel week",
    traces: "binned",
  });
}
