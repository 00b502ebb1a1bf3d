import type { Plan } from "../../../asked/plan/index.ts";
import { countedDays } from "./weekResponse.ts";
import { weekResponses } from "./weekResponses.ts";

/** Of a week as a whole, and of each day. */
const PICKED = [
  ...[
    "finish",
    "overtime",
    "week.overtime",
    "week.carcasses",
    "week.carcassKg",
    "week.paidHours",
    "week.overtimeHours",
  ],
  ...[
    "week.cost.processing",
    "costPerHead",
    "costPerKg",
    "week.margin",
    "week.fullMargin",
    "ordersMet",
    "rest.shortest",
  ],
];
const PICKED_OF_DAYS = ["finish", "overtime", "carcasses", "leftInLairage"];

/** Keys of the responses of a week reported when nobody asks for others. */
export function usualOfWeek(plan: Plan): string[] {
  const limits = plan.limits.flatMap(({ name }) => [`beyond.${name}`, `worst.${name}`]);
  const orders = plan.week!.orders.flatMap(({ name }) => [`order.${name}.late`, `order.${name}.short`]);
  const days = countedDays(plan).flatMap(({ name }) => PICKED_OF_DAYS.map((key) => `${name}.${key}`));
  const known = new Set(weekResponses(plan).map(({ key }) => key));
  return [...PICKED, ...orders, ...limits, ...days].filter((key) => known.has(key));
}
