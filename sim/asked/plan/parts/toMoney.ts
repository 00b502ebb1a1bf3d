import type { Money, PlantCosts } from "../plan.ts";
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
    plantCosts: file.plantCosts && toPlantCosts(file.plantCosts),
    pricesPerKg: Object.fromEntries(Object.entries(file.prices).map(([name, price]) => [name, price.amount])),
  };
}

function toPlantCosts(file: NonNullable<NonNullable<PlanFile["money"]>["plantCosts"]>): PlantCosts {
  const { building, inspection, loan } = file;
  return {
    daysPerYear: file.daysPerYear,
    building: building && { price: building.price.amount, lifeYears: building.life },
    packagingPerCarcass: file.packaging?.amount ?? 0,
    inspectionPerHead: inspection.perHead?.amount ?? 0,
    inspectionPerSecond: inspection.perHour?.amountPerSecond ?? 0,
    wastePerKg: file.waste?.amount ?? 0,
    overheadPerYear: file.overheadPerYear?.amount ?? 0,
    maintenanceShare: file.maintenance,
    loan: loan && {
      amount: loan.amount.amount,
      interestPerYear: loan.interest,
      years: loan.years,
      paymentsPerYear: loan.paymentsPerYear,
    },
  };
}
