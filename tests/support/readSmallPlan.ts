import { type Plan, readPlan } from "../../sim/asked/plan/index.ts";
import { SMALL_PLAN } from "./smallPlan.ts";

const NO_FILES = {
  readText(path: string): string {
    throw new Error(`${path}: the small plan names no file`);
  },
};

/** The small plan, checked; `change` replaces top-level parts of its file. */
export function readSmallPlan(change: Record<string, unknown> = {}): Plan {
  const { plan, faults } = readPlan({ ...SMALL_PLAN, ...change }, NO_FILES);
  if (plan === null) throw new Error(JSON.stringify(faults));
  return plan;
}
