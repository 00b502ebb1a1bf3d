import type { Money, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS, steps } from "../line/index.ts";
import { costSheet } from "./costSheet.ts";
import { type Costs, capitals, costs } from "./costs.ts";
import type { Response } from "./response.ts";
import { revenue, revenueOf } from "./revenue.ts";
import { per, row } from "./row.ts";
import { drawsWater } from "./serviceResponses.ts";
import { usesEnergy, usesWater } from "./utilityUse.ts";

/** Cost, revenue and margin of the day; nothing for a plan without money. "Per head" is per carcass out. */
export function moneyResponses(plan: Plan): Response[] {
  const { money } = plan;
  if (money === null) return [];
  const earns = Object.keys(money.pricesPerKg);
  return [
    ...perUnit(plan, money),
    ...(earns.length > 0 ? margins(plan, money) : []),
    ...costParts(plan, money),
    ...earns.map((product) => earned(product, plan, money)),
  ];
}

const LESS = { better: "less" } as const;
const MORE = { better: "more" } as const;

function carcassesOut(day: DayRecord): number {
  return day.heads.out[CARCASS] ?? 0;
}

function perUnit(plan: Plan, money: Money): Response[] {
  const { currency } = money;
  return [
    row(
      "costPerHead",
      "Processing cost per head, animals not included",
      `${currency}/head`,
      (day) => per(costs(day, plan, money).processing, carcassesOut(day)),
      LESS,
    ),
    row(
      "costPerKg",
      "Processing cost per kg of carcass, animals not included",
      `${currency}/kg`,
      (day) => costSheet(day, plan)!.costPerKg,
      LESS,
    ),
  ];
}

function margins(plan: Plan, money: Money): Response[] {
  const { currency } = money;
  const margin = (day: DayRecord) => costSheet(day, plan)!.margin;
  const words = money.livePricePerKg === null ? "animals not counted" : "animals included";
  return [
    row("revenue", "Revenue of the day", currency, (day) => revenue(day, plan, money), MORE),
    row("margin", `Margin of the day, ${words}`, currency, margin, MORE),
    row(
      "marginPerHead",
      `Margin per head, ${words}`,
      `${currency}/head`,
      (day) => per(margin(day), carcassesOut(day)),
      MORE,
    ),
  ];
}

function costParts(plan: Plan, money: Money): Response[] {
  const all = steps(plan);
  const consumers = plan.utilities?.consumers ?? [];
  const wet = all.some(usesWater) || consumers.some(drawsWater);
  const parts: [keyof Costs, string, boolean][] = [
    ["regularPay", "pay inside the shifts", plan.crews.length > 0],
    ["overtimePay", `overtime pay, ${money.overtimeFactor} times the usual`, plan.crews.length > 0],
    ["water", "fresh water", wet],
    ["wasteWater", "waste water", wet],
    ["energy", "energy", all.some(usesEnergy) || consumers.length > 0],
    ["fuel", "fuel for hot water", consumers.some(({ celsius }) => celsius !== null)],
    ["capital", "machines: price spread evenly over their life, no interest", capitals(plan).length > 0],
    ["processing", "processing, animals not included", true],
    ["animals", "live animals", money.livePricePerKg !== null],
    ["total", "total", true],
  ];
  return parts
    .filter(([, , present]) => present)
    .map(([part, words]) =>
      row(`cost.${part}`, `Cost of the day: ${words}`, money.currency, (day) => costs(day, plan, money)[part], LESS),
    );
}

function earned(product: string, plan: Plan, money: Money): Response {
  return row(
    `revenue.${product}`,
    `Revenue: ${product}`,
    money.currency,
    (day) => revenueOf(product, day, plan, money),
    MORE,
  );
}
