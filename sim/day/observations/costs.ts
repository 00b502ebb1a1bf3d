import type { Capital, Money, Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { steps } from "../line/index.ts";
import { livePaidKg } from "./carcassKg.ts";
import { paidTime } from "./labour.ts";
import { plantUse } from "./utilityUse.ts";

/** What a day cost, in the plan's currency. `processing` is all but the animals. */
export interface Costs {
  regularPay: number;
  overtimePay: number;
  water: number;
  wasteWater: number;
  energy: number;
  fuel: number;
  capital: number;
  processing: number;
  animals: number;
  total: number;
}

/**
 * Pay by paid hours, overtime at the plan's factor; water twice, as fresh and as waste water; energy; capital by the
 * straight line: price / (life x working days a year), the same on a day without work; animals by their live weight,
 * those dead on arrival not (common practice, no source). Interest, rent, upkeep, veterinary fees and office are not in it.
 */
export function costs(day: DayRecord, plan: Plan, money: Money): Costs {
  const use = plantUse(day, plan);
  const parts = {
    ...pay(day, plan, money),
    water: use.freshLitres * money.waterPerLitre,
    wasteWater: use.freshLitres * money.wasteWaterPerLitre,
    energy: use.kilowattHours * money.energyPerKilowattHour,
    fuel: use.fuelKilowattHours * money.fuelPerKilowattHour,
    capital: capitals(plan).reduce((sum, capital) => sum + capitalPerDay(capital), 0),
  };
  const processing = Object.values(parts).reduce((sum, part) => sum + part, 0);
  const animals = livePaidKg(day, plan) * (money.livePricePerKg ?? 0);
  return { ...parts, processing, animals, total: processing + animals };
}

/** Straight-line charge of one working day; no interest. */
export function capitalPerDay({ price, lifeYears, daysPerYear }: Capital): number {
  return price / (lifeYears * daysPerYear);
}

/** Of every stage, and of every station on a chain, that has a price. */
export function capitals(plan: Plan): Capital[] {
  return steps(plan).flatMap((step) =>
    does(step, "handle crates") || step.of.capital === null ? [] : [step.of.capital],
  );
}

function pay(day: DayRecord, plan: Plan, money: Money): Pick<Costs, "regularPay" | "overtimePay"> {
  let [regularPay, overtimePay] = [0, 0];
  for (const crew of plan.crews) {
    const { regularSeconds, overtimeSeconds } = paidTime(crew, day, plan);
    const rate = crew.payPerSecond ?? 0;
    regularPay += regularSeconds * rate;
    overtimePay += overtimeSeconds * rate * money.overtimeFactor;
  }
  return { regularPay, overtimePay };
}
