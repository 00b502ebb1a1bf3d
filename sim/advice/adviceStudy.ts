import type { Plan } from "../plan/index.ts";
import type { Why } from "../results/index.ts";
import { PLAIN_PROCEDURE, type Study } from "../study/index.ts";
import type { PlanChange } from "./change.ts";
import { chooseChanges } from "./chooseChanges.ts";

export interface AdviceOptions {
  seed: string;
  /** Days of the base and of each change. */
  replications: number;
  confidence: number;
}

/** What a change is worth is told in the end of work; in throughput or carcasses where the plan has no end of its own. */
export function adviceResponse({ supply, day }: Plan): string {
  if (supply.kind === "saturated") return "headsPerHour";
  return day.closing.rule === "stop hanging" ? "carcasses" : "finish";
}

/** The base alone: what its end of work is owed to. */
export function whyStudy(plan: Plan, { seed, replications, confidence }: AdviceOptions): Study {
  const headline = adviceResponse(plan);
  return {
    name: `Why ${plan.name} ends when it does`,
    question: "What should be changed first?",
    reader: "process engineer",
    ...{ seed, replications, confidence },
    responses: [...new Set([headline, "headsPerHour", "finish", "overtime"])],
    why: true,
    factors: [],
    variants: [{ name: "base", levels: [], set: {}, insert: [], remove: [], plan }],
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}

/** The base and every change that its binding path says is worth trying, on the same random numbers. */
export function adviceStudy(plan: Plan, why: Why, options: AdviceOptions): { study: Study; changes: PlanChange[] } {
  const base = whyStudy(plan, options);
  const changes = chooseChanges(plan, why);
  const variants = changes.map(({ label, set, apply }) => ({
    ...{ name: label, levels: [], set, insert: [], remove: [] },
    plan: apply(plan),
  }));
  return { study: { ...base, variants: [...base.variants, ...variants] }, changes };
}
