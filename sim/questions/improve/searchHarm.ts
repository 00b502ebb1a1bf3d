import type { Plan } from "../../asked/plan/index.ts";
import { harmOf } from "../../days/results/index.ts";
import type { ImproveQuestion } from "./question.ts";
import type { Trial } from "./trials.ts";

type HarmQuestion = Pick<ImproveQuestion, "base" | "limits">;

/** The plan's limits that the question says nothing of: of the others it says which share of heads may be outside. */
export function unasked({ base, limits }: HarmQuestion): Pick<Plan, "limits"> {
  return { limits: base.plan.limits.filter(({ name }) => limits.every((asked) => asked.name !== name)) };
}

/** What the design made worse than the plan as it is, on the days of the search. */
export function searchHarm(
  { design, responses }: Trial,
  tried: readonly Trial[],
  question: HarmQuestion,
): string | null {
  const asIs = tried.find((trial) => trial.design.key === "base");
  return asIs === undefined || design === asIs.design ? null : harmOf(unasked(question), asIs.responses, responses);
}
