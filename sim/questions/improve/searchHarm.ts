import type { Plan } from "../../asked/plan/index.ts";
import type { ImproveQuestion } from "./question.ts";
import type { Trial } from "./trials.ts";
import { harmWithOrders } from "./week/orderHarm.ts";

type HarmQuestion = Pick<ImproveQuestion, "base" | "limits">;

/** The plan's limits and orders that the question says nothing of: of the others it says which share of heads may be outside. */
export function unasked({ base, limits }: HarmQuestion): Pick<Plan, "limits" | "week"> {
  const { week } = base.plan;
  const open = base.plan.limits.filter(({ name }) =>
    limits.every((asked) => asked.of === "orders" || asked.name !== name),
  );
  return { limits: open, ...(week === undefined || limits.some(({ of }) => of === "orders") ? {} : { week }) };
}

/** What the design made worse than the plan as it is, on the days of the search. */
export function searchHarm(
  { design, responses }: Trial,
  tried: readonly Trial[],
  question: HarmQuestion,
): string | null {
  const asIs = tried.find((trial) => trial.design.key === "base");
  return asIs === undefined || design === asIs.design
    ? null
    : harmWithOrders(unasked(question), asIs.responses, responses);
}
