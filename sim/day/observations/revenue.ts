import type { Money, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import { carcassSoldKg } from "./carcassKg.ts";

/**
 * What one priced thing brought: its kilograms, out as a head or taken off as a by-product, times its price; negative for a
 * cost. Carcasses by the weight at which they are sold, hot or cold.
 */
export function revenueOf(product: string, day: DayRecord, plan: Plan, money: Money): number {
  const { masses } = day;
  const out = product === CARCASS ? carcassSoldKg(day, plan) : (masses.outKg[product] ?? 0);
  return (out + (masses.byProductsKg[product] ?? 0)) * (money.pricesPerKg[product] ?? 0);
}

/** All of it. */
export function revenue(day: DayRecord, plan: Plan, money: Money): number {
  return Object.keys(money.pricesPerKg).reduce((sum, product) => sum + revenueOf(product, day, plan, money), 0);
}
