import type { Plan } from "../../asked/plan/index.ts";
import { usualOfDay } from "./usualOfDay.ts";
import { usualOfWeek } from "./week/usualOfWeek.ts";

/** Keys of the responses reported when nobody asks for others: those of a day, or of a week where the plan has one. */
export function usualResponses(plan: Plan): string[] {
  return plan.week === undefined ? usualOfDay(plan) : usualOfWeek(plan);
}
