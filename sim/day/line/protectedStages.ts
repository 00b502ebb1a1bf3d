import type { Plan } from "../../asked/plan/plan.ts";
import type { Step } from "./steps.ts";

/** By step: lies on the stretch (its first stage to its last, in the plan's order) that a planned stop may not catch a head in. */
export function protectedStages(plan: Plan, all: Step[]): boolean[] {
  const { safeStop } = plan.day;
  if (safeStop === null) return all.map(() => false);
  const names = all.map((step) => step.name);
  const from = names.lastIndexOf(safeStop.from);
  const to = names.lastIndexOf(safeStop.to);
  return all.map((_, index) => index >= from && index <= to);
}
