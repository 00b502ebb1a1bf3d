import type { Plan } from "../../asked/plan/index.ts";
import { responsesOf } from "../../day/observations/index.ts";

/** What a planner asks first; those of them that the plan has. */
const ASKED = ["finish", "overtime", "headsPerHour", "costPerHead"];

/** The study that asks about a plan alone, as a file would: `json` is the plan as its own file says it. */
export function planStudy(plan: Plan, json: unknown): Record<string, unknown> {
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  const name = [...plan.name].slice(0, 60).join("").trim();
  return { name, plan: json, seed: "1", responses: ASKED.filter((key) => known.has(key)) };
}
