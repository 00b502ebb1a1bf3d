import { chillLossNames, type Loan, type Money, type Plan, type PlantCosts } from "../../asked/plan/index.ts";
import { loanPayment } from "../../maths/numeric/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import { capitals } from "./costs.ts";
import { workingSeconds } from "./workingTime.ts";

/** What the plant itself cost on one day, in the plan's currency. */
export interface PlantCostParts {
  building: number;
  packaging: number;
  inspection: number;
  waste: number;
  overhead: number;
  maintenance: number;
  /** Interest, the same every day of the term; what is paid back is no cost, since prices are charged over the life. */
  loanInterest: number;
  total: number;
}

/** Null for a plan that does not give them. By the year: the same on every working day. */
export function plantCosts(day: DayRecord, plan: Plan, money: Money): PlantCostParts | null {
  const { plantCosts: given } = money;
  if (given === null) return null;
  const { daysPerYear, building, loan } = given;
  const parts = {
    building: building === null ? 0 : building.price / (building.lifeYears * daysPerYear),
    packaging: given.packagingPerCarcass * (day.heads.out[CARCASS] ?? 0),
    inspection: given.inspectionPerHead * day.heads.hung + given.inspectionPerSecond * workingSeconds(day, plan),
    waste: given.wastePerKg * wasteKg(day, plan, money),
    overhead: given.overheadPerYear / daysPerYear,
    maintenance: (given.maintenanceShare * purchases(plan, given)) / daysPerYear,
    loanInterest: loan === null ? 0 : interestPerYear(loan) / daysPerYear,
  };
  return { ...parts, total: Object.values(parts).reduce((sum, part) => sum + part, 0) };
}

/** What the bank takes in a year, interest and repayment. */
export function loanPerYear({ amount, interestPerYear: interest, years, paymentsPerYear }: Loan): number {
  return amount * loanPayment(interest / paymentsPerYear, years * paymentsPerYear) * paymentsPerYear;
}

/** All payments less the loan, spread over the term. */
function interestPerYear(loan: Loan): number {
  return loanPerYear(loan) - loan.amount / loan.years;
}

function purchases(plan: Plan, { building }: PlantCosts): number {
  return capitals(plan).reduce((sum, { price }) => sum + price, building?.price ?? 0);
}

/** What has no price of its own, neither sold nor paid for by name; what dries away in the chiller is no waste. */
function wasteKg({ masses }: DayRecord, plan: Plan, { pricesPerKg }: Money): number {
  const nobodys = new Set([CARCASS, ...Object.keys(pricesPerKg), ...chillLossNames(plan.line)]);
  return [...Object.entries(masses.byProductsKg), ...Object.entries(masses.outKg)].reduce(
    (sum, [name, kg]) => (nobodys.has(name) ? sum : sum + kg),
    0,
  );
}
