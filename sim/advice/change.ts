import type { Plan } from "../plan/index.ts";
import type { TriedChange } from "../results/index.ts";

/** One change to a plan that may be worth trying. */
export interface PlanChange extends Pick<TriedChange, "kind" | "of" | "label"> {
  /** What is set, as the plan's file writes it: path -> value. */
  set: Record<string, unknown>;
  apply(plan: Plan): Plan;
}
