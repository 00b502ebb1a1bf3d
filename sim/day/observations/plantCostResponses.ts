import type { Money, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import { costSheet, fullCost } from "./costSheet.ts";
import { type PlantCostParts, plantCosts } from "./plantCosts.ts";
import type { Response } from "./response.ts";
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
  return [...fullCosts(plan, money), ...parts(plan, money), ...loan(plan, money)];
}

function fullCosts(plan: Plan, money: Money): Response[] {
  const { currency } = money;
  const heads = (day: DayRecord) => day.heads.out[CARCASS] ?? 0;
  const sheet = (day: DayRecord) => costSheet(day, plan)!;
  const rows = [
    row(
      "fullCostPerHead",
      "Cost per head, with the costs of the plant, animals not included",
      `${currency}/head`,
      (day) => per(fullCost(sheet(day)), heads(day)),
      LESS,
    ),
    row(
      "fullCostPerKg",
      "Cost per kg of carcass, with the costs of the plant, animals not included",
      `${currency}/kg`,
      (day) => sheet(day).fullCostPerKg,
      LESS,
    ),
    ...(Object.keys(money.pricesPerKg).length === 0
      ? []
      : [
          row(
            "fullMargin",
            "Margin of the day, with the costs of the plant",
            currency,
            (day) => sheet(day).fullMargin,
            MORE,
          ),
        ]),
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
function loan(plan: Plan, { plantCosts: given, currency }: Money): Response[] {
  if (given === null || given.loan === null) return [];
  const paid = row(
    "loanPayment",
    "Paid to the bank each working day, interest and repayment",
    currency,
    (day) => costSheet(day, plan)!.loanPayment,
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
