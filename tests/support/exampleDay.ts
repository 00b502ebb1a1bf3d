import { resolve } from "node:path";
import type { Plan } from "../../sim/asked/plan/index.ts";
import { loadPlan, readInputFile } from "../../sim/cli/inputs.ts";
import type { StudyResults } from "../../sim/days/results/index.ts";
import { runSingleDay } from "../../sim/days/run/index.ts";

const PLANS = resolve(import.meta.dirname, "../../experiments/plans");

export function examplePlan(name: string): Plan {
  return loadPlan(readInputFile(resolve(PLANS, `${name}.json`)));
}

/** One simulated day of an example plan, `name` without ending: "parts/chiller". */
export function exampleDay(name: string, traces: "none" | "binned" | "exact" = "binned"): StudyResults {
  return runSingleDay(examplePlan(name), "1", traces, {
    gambrel: "0.0.0",
    command: `gambrel day ${name}.json --seed 1`,
  });
}
