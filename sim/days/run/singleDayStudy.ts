import type { Plan } from "../../asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study } from "../../asked/study/index.ts";

/** One day of one plan as the smallest study there is: one variant, one replication, the usual responses. */
export function singleDayStudy(plan: Plan, seed: string): Study {
  return {
    name: plan.name,
    question: "What does one day of this plan look like?",
    reader: "whoever looks at the plan",
    seed,
    replications: 1,
    confidence: 0.95,
    responses: [],
    why: true,
    factors: [],
    variants: [{ name: "the plan", levels: [], set: {}, insert: [], remove: [], plan }],
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}
