import type { Plan } from "../../asked/plan/index.ts";

export const GOALS = ["throughput", "margin", "cost", "overtime"] as const;
export type Goal = (typeof GOALS)[number];

/** The response that says how well a goal is met; the direction that is wanted is the response's own. */
const GOAL_RESPONSE: Record<Goal, string> = {
  throughput: "headsPerHour",
  margin: "margin",
  cost: "cost.processing",
  overtime: "overtime",
};

/** What of a week is a sum of its days. */
const SUMMED: readonly Goal[] = ["margin", "cost", "overtime"];

/** Of a plan with a week the sum over its days, but for throughput, which is their mean. */
export function goalResponse(goal: Goal, { week }: Pick<Plan, "week">): string {
  const key = GOAL_RESPONSE[goal];
  return week !== undefined && SUMMED.includes(goal) ? `week.${key}` : key;
}

/** What a goal of a whole week is called, and the cost of a day; null where the response's own label says it. */
export function goalLabel(key: string): string | null {
  const labels: Record<string, string> = {
    ...{ "week.margin": "Margin of the week", "week.overtime": "Overtime of the week" },
    ...{
      "week.cost.processing": "Cost of the week without the animals",
      "cost.processing": "Cost of the day without the animals",
    },
  };
  return labels[key] ?? null;
}

/** Whether the goal is the money itself. */
export function isMoney(key: string): boolean {
  return /^(week\.)?(margin|cost\.processing)$/.test(key);
}

/** End of the last shift, seconds after the day's start. */
export function lastShiftEnd({ day }: Plan): number {
  return day.shifts.at(-1)?.toSeconds ?? 0;
}
