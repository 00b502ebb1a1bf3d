import type { Plan } from "../../../asked/plan/index.ts";
import { harmOf, shownMore } from "../../../days/results/index.ts";
import { formatShare } from "../../../text/units/index.ts";

type Values = Readonly<Record<string, readonly (number | null)[]>>;

/** One-sided error probability of calling luck a late order. */
const LATE_ALPHA = 0.1;

/** What a change makes worse: the plan's limits and heads (see `harmOf`), then its week's orders, by how many more of them are late; null for nothing. */
export function harmWithOrders(plan: Pick<Plan, "limits" | "week">, before: Values, after: Values): string | null {
  return harmOf(plan, before, after) ?? orderHarm(plan, before, after);
}

function orderHarm({ week }: Pick<Plan, "week">, before: Values, after: Values): string | null {
  if (week === undefined || week.orders.length === 0) return null;
  const [from, to] = [before, after].map(lateShares) as [number[], number[]];
  if (!shownMore(from, to, LATE_ALPHA)) return null;
  const [then, now] = [to, from].map((list) => formatShare(list.reduce((sum, share) => sum + share, 0) / list.length));
  return `${then} instead of ${now} of the orders would be late`;
}

function lateShares({ ordersMet = [] }: Values): number[] {
  return ordersMet.map((met) => (met === null ? 0 : 1 - met));
}
