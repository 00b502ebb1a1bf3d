import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { carcassOutKg } from "./carcassKg.ts";
import { type Costs, costs } from "./costs.ts";
import { loanPerYear, type PlantCostParts, plantCosts } from "./plantCosts.ts";
import { revenue } from "./revenue.ts";
import { per } from "./row.ts";

/** Cost and margin of one day, without and with what the plant itself costs. */
export interface CostSheet {
  currency: string;
  costs: Costs;
  /** Null when the plan does not give it. */
  plant: PlantCostParts | null;
  /** Null when nothing has a price. */
  revenue: number | null;
  /** Processing for a kilogram of carcass, animals not included; null without carcasses. */
  costPerKg: number | null;
  fullCostPerKg: number | null;
  margin: number | null;
  fullMargin: number | null;
  /** To the bank, a working day; null without a loan. */
  loanPayment: number | null;
}

/** Null for a plan without money. */
export function costSheet(day: DayRecord, plan: Plan): CostSheet | null {
  const { money } = plan;
  if (money === null) return null;
  const spent = costs(day, plan, money);
  const plant = plantCosts(day, plan, money);
  const earned = Object.keys(money.pricesPerKg).length === 0 ? null : revenue(day, plan, money);
  const margin = earned === null ? null : earned - spent.total;
  const kilograms = carcassOutKg(day);
  const { loan, daysPerYear } = money.plantCosts ?? { loan: null, daysPerYear: 1 };
  return {
    currency: money.currency,
    costs: spent,
    plant,
    revenue: earned,
    costPerKg: per(spent.processing, kilograms),
    fullCostPerKg: plant === null ? null : per(fullCost({ costs: spent, plant }), kilograms),
    margin,
    fullMargin: margin === null || plant === null ? null : margin - plant.total,
    loanPayment: loan === null ? null : loanPerYear(loan) / daysPerYear,
  };
}

/** Processing, and what the plant itself costs where the plan gives it. */
export function fullCost({ costs: { processing }, plant }: Pick<CostSheet, "costs" | "plant">): number {
  return plant === null ? processing : processing + plant.total;
}
