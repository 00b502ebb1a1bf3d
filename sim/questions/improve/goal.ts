import type { Plan } from "../../asked/plan/index.ts";

export const GOALS = ["throughput", "margin", "overtime"] as const;
export type Goal = (typeof GOALS)[number];

/** The response that says how well a goal is met; the direction that is wanted is the response's own. */
export const GOAL_RESPONSE: Record<Goal, string> = {
  throughput: "headsPerHour",
  margin: "margin",
  overtime: "overtime",
};

/** End of the last shift, seconds after the day's start. */
export function lastShiftEnd({ day }: Plan): number {
  return day.shifts.at(-1)?.toSeconds ?? 0;
}
