import type { DayRecord } from "../engine/index.ts";
import type { Money } from "../plan/index.ts";

/** What one priced thing brought: its kilograms, out as a head or taken off as a by-product, times its price; negative for a cost. */
export function revenueOf(product: string, { masses }: DayRecord, money: Money): number {
  return ((masses.outKg[product] ?? 0) + (masses.byProductsKg[product] ?? 0)) * (money.pricesPerKg[product] ?? 0);
}

/** All of it. */
export function revenue(day: DayRecord, money: Money): number {
  return Object.keys(money.pricesPerKg).reduce((sum, product) => sum + revenueOf(product, day, money), 0);
}
