import type { DayPlan, Plan } from "../../sim/asked/plan/plan.ts";

/** The plan on another day: shifts, breaks, closing and so on changed. */
export function withDay(plan: Plan, day: Partial<DayPlan>): Plan {
  return { ...plan, day: { ...plan.day, ...day } };
}
