import type { Plan } from "../../asked/plan/index.ts";
import type { ChangeKind } from "../../days/results/index.ts";

/** A plan with a change made to it, and what the change sets as the plan's file writes it: path -> value. */
export interface Changed {
  plan: Plan;
  set: Record<string, unknown>;
}

/** One change that may be worth trying. What has to come with it (a position's person) is part of it. */
export interface PlanChange {
  kind: ChangeKind;
  /** Stage, crew, or "the breaks". */
  of: string;
  /** What it is, by itself: "one more position at evisceration with its person". */
  label: string;
  /** The same after the name of `of` and a colon, as a subject: "one more position with its person". */
  phrase: string;
  /** Whether the phrase takes a verb in the plural. */
  plural: boolean;
  /** A copy of the plan with the change; the plan may have other changes already. */
  on(plan: Plan): Changed;
}
