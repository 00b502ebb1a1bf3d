import { formatFault, readPlan } from "../../../../sim/asked/plan/index.ts";
import { wholePlan } from "../../../support/wholePlan.ts";

// biome-ignore lint/suspicious/noExplicitAny: tests write what a plan may not hold
export type Loose = any;

const NO_FILES = {
  readText(path: string): string {
    throw new Error(`${path}: the whole plan names no file`);
  },
};

/** Every fault of the whole plan once it is changed, as people read them. */
export function wholeFaults(change: (plan: Loose) => void): string[] {
  return readChanged(change).faults.map(formatFault);
}

/** Every warning of the whole plan once it is changed; the plan must be sound. */
export function wholeWarnings(change: (plan: Loose) => void): string[] {
  const reading = readChanged(change);
  if (reading.plan === null) throw new Error(reading.faults.map(formatFault).join("\n"));
  return reading.warnings.map(formatFault);
}

/** The stage, or station on a chain, of that name. */
export function stageOf(plan: Loose, name: string): Loose {
  const all = plan.line.flatMap((stage: Loose) => [stage, ...(stage.stations ?? [])]);
  return all.find((stage: Loose) => stage.name === name);
}

function readChanged(change: (plan: Loose) => void) {
  const plan = wholePlan();
  change(plan);
  return readPlan(plan, NO_FILES);
}
