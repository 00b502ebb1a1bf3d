import type { Money, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import { carcassOutKg } from "./carcassKg.ts";
import { costs } from "./costs.ts";
import { loanPerYear, type PlantCostParts, plantCosts } from "./plantCosts.ts";
import type { Response } from "./response.ts";
import { revenue } from "./revenue.ts";
import { per, row } from "./row.ts";

const LESS = { better: "less" } as const;
const MORE = { better: "more" } as const;
const MEANING =
  "Processing cost plus building, packaging, inspection, waste, overhead, maintenance and interest, where the plan gives them.";

export const PART_WORDS: Record<Exclude<keyof PlantCostParts, "total">, string> = {
  building: "building: price spread evenly over its life, no interest",
  packaging: "packaging",
  inspection: "inspection fees",
  waste: "waste that has no price of its own",
  overhead: "overhead",
  maintenance: "maintenance",
  loanInterest: "interest on the loan, average over its term",
};

/** Cost and margin with what the plant itself costs; nothing for a plan that does not give it. */
export function plantCostResponses(plan: Plan): Response[] {
  const { money } = plan;
  if (money === null || money.plantCosts === null) return [];
  return [...fullCosts(plan, money), ...parts(plan, money), ...loan(money)];
}

function fullCosts(plan: Plan, money: Money): Response[] {
  const { currency } = money;
  const heads = (day: DayRecord) => day.heads.out[CARCASS] ?? 0;
  const full = (day: DayRecord) => costs(day, plan, money).processing + plantCosts(day, plan, money)!.total;
  const margin = (day: DayRecord) =>
    revenue(day, plan, money) - costs(day, plan, money).total - plantCosts(day, plan, money)!.total;
  const rows = [
    row(
      "fullCostPerHead",
      "Cost per head, with the costs of the plant, animals not included",
      `${currency}/head`,
      (day) => per(full(day), heads(day)),
      LESS,
    ),
    row(
      "fullCostPerKg",
      "Cost per kg of carcass, with the costs of the plant, animals not included",
      `${currency}/kg`,
      (day) => per(full(day), carcassOutKg(day)),
      LESS,
    ),
    ...(Object.keys(money.pricesPerKg).length === 0
      ? []
      : [row("fullMargin", "Margin of the day, with the costs of the plant", currency, margin, MORE)]),
  ];
  return rows.map((each) => ({ ...each, meaning: MEANING }));
}

function parts(plan: Plan, money: Money): Response[] {
  const keys = [...Object.entries(PART_WORDS), ["total", "together"]] as [keyof PlantCostParts, string][];
  return keys.map(([key, words]) =>
    row(
      `plantCost.${key}`,
      `Cost of the plant, a day: ${words}`,
      money.currency,
      (day) => plantCosts(day, plan, money)![key],
      LESS,
    ),
  );
}

/** Money that leaves, which is not the same as cost. */
function loan({ plantCosts: given, currency }: Money): Response[] {
  if (given === null || given.loan === null) return [];
  const { loan: borrowed, daysPerYear } = given;
  const paid = row(
    "loanPayment",
    "Paid to the bank each working day, interest and repayment",
    currency,
    () => loanPerYear(borrowed) / daysPerYear,
    LESS,
  );
  return [
    {
      ...paid,
      meaning:
        "Money that leaves the account. Only the interest is a cost, because machines and building are charged over their life.",
    },
  ];
}
