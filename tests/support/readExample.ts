import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { formatFault, type Plan, readPlan } from "../../sim/asked/plan/index.ts";

const PLANS = resolve(import.meta.dirname, "../../experiments/plans");

// biome-ignore lint/suspicious/noExplicitAny: tests write what a plan may not hold
type Loose = any;

/** The file of an example plan as JSON, `name` without ending, changed. */
export function exampleFile(name: string, change: (plan: Loose) => void = () => {}): Loose {
  const plan = JSON.parse(readFileSync(resolve(PLANS, `${name}.json`), "utf8"));
  change(plan);
  return plan;
}

/** The changed example with every fault and warning as people read them. */
export function readExample(name: string, change: (plan: Loose) => void = () => {}) {
  const reading = readPlan(exampleFile(name, change), { readText: () => "" });
  return {
    plan: reading.plan as Plan,
    faults: reading.faults.map(formatFault),
    warnings: reading.plan === null ? [] : reading.warnings.map(formatFault),
  };
}
