import type { Plan } from "../../asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study } from "../../asked/study/index.ts";
import { countedDays, responsesOf } from "../../day/observations/index.ts";

/** Of each day and of the week as a whole, as far as the plan has them. */
const OF_DAYS = [
  ...["finish", "overtime", "carcasses", "carcassKg", "leftInLairage", "paidHours"],
  ...["fullCostPerKg", "costPerKg", "costPerHead", "cost.processing"],
];
const OF_WEEK = [
  ...[
    "finish",
    "overtime",
    "week.carcasses",
    "week.carcassKg",
    "week.overtime",
    "week.paidHours",
    "week.overtimeHours",
  ],
  ...["fullCostPerKg", "costPerKg", "costPerHead", "week.cost.processing", "week.margin", "week.fullMargin"],
  ...["ordersMet", "rest.shortest"],
];

/** A plan's week as a study of itself: so many weeks, the days beside each other. Its plan must have a week. */
export function weekStudy(plan: Plan, seed: string, weeks: number): Study {
  const limits = plan.limits.map(({ name }) => `beyond.${name}`);
  const orders = plan.week!.orders.flatMap(({ name }) => [`order.${name}.late`, `order.${name}.short`]);
  const ofDays = countedDays(plan).flatMap(({ name }) => [...OF_DAYS, ...limits].map((key) => `${name}.${key}`));
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  return {
    name: plan.name,
    question: "What does this week come to?",
    kind: "what will it be",
    reader: "planner",
    seed,
    replications: weeks,
    confidence: 0.95,
    responses: [...OF_WEEK, ...orders, ...limits, ...ofDays].filter((key) => known.has(key)),
    why: false,
    factors: [],
    variants: [{ name: "the week", levels: [], set: {}, insert: [], remove: [], plan }],
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}
