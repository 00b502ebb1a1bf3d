import type { Money } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { tidy } from "./tidy.ts";

const LITRES_PER_M3 = 1000;
const JOULES_PER_KILOWATT_HOUR = 3_600_000;

/** Prices as the file has them are per cubic metre, joule and kilogram. */
export function toMoney(file: NonNullable<PlanFile["money"]>): Money {
  return {
    currency: file.currency,
    waterPerLitre: tidy((file.water?.amount ?? 0) / LITRES_PER_M3),
    wasteWaterPerLitre: tidy((file.wasteWater?.amount ?? 0) / LITRES_PER_M3),
    energyPerKilowattHour: tidy((file.energy?.amount ?? 0) * JOULES_PER_KILOWATT_HOUR),
    fuelPerKilowattHour: tidy((file.fuel?.amount ?? 0) * JOULES_PER_KILOWATT_HOUR),
    overtimeFactor: file.overtimeFactor,
    livePricePerKg: file.livePrice?.amount ?? null,
    pricesPerKg: Object.fromEntries(Object.entries(file.prices).map(([name, price]) => [name, price.amount])),
  };
}
