import type { Plan } from "../../sim/asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study } from "../../sim/asked/study/index.ts";
import { readSmallPlan } from "./readSmallPlan.ts";

const PLAN = readSmallPlan();

/** The small plan with a slower skinning; invented. */
export const SLOWER_PLAN: Plan = {
  ...PLAN,
  line: PLAN.line.map((stage) =>
    stage.name === "skinning" && stage.kind === "station"
      ? { ...stage, cycleSeconds: { family: "lognormal", mean: 30, cv: 0.3 } }
      : stage,
  ),
};

/** A study of the small plan, of a slower one, and of the small plan once more. */
export function threeVariants(change: Partial<Study> = {}): Study {
  return {
    name: "Study",
    question: "Which?",
    reader: "tests",
    seed: "seed",
    replications: 4,
    confidence: 0.95,
    responses: ["headsPerHour", "carcasses"],
    why: false,
    factors: [],
    variants: [
      { name: "base", levels: [], set: {}, insert: [], remove: [], plan: PLAN },
      { name: "slower", levels: [], set: {}, insert: [], remove: [], plan: SLOWER_PLAN },
      { name: "base again", levels: [], set: {}, insert: [], remove: [], plan: PLAN },
    ],
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
    ...change,
  };
}
