import type { Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { steps } from "../line/index.ts";
import { perTonne } from "./carcassKg.ts";
import { type CoolingLoad, coolingLoad } from "./coolingLoad.ts";
import { codKilograms, type ServiceTotals, type ServiceUse, serviceTotals, serviceUses } from "./plantServices.ts";
import { plantUse, type UtilityUse, usesEnergy, usesWater, utilityUse } from "./utilityUse.ts";

/** What a day took of water, heat, air and electricity, and who took it. */
export interface UtilitySheet {
  /** Stages that use some; their water is cold. */
  stages: { name: string; litres: number; electricKilowattHours: number }[];
  consumers: ServiceUse[];
  services: ServiceTotals;
  coldRooms: (CoolingLoad & { name: string })[];
  total: UtilityUse;
  /** For a tonne of carcass; null without carcasses. */
  litresPerTonne: number | null;
  kilowattHoursPerTonne: number | null;
  /** Oxygen demand of the waste water; null when not given. */
  codKilograms: number | null;
}

/** Null for a plan that uses nothing. */
export function utilitySheet(day: DayRecord, plan: Plan): UtilitySheet | null {
  const using = steps(plan).filter((step) => usesWater(step) || usesEnergy(step));
  const consumers = serviceUses(day, plan);
  if (using.length === 0 && consumers.length === 0) return null;
  const total = plantUse(day, plan);
  return {
    stages: using.map((step) => {
      const { freshLitres, kilowattHours } = utilityUse(step, day, plan);
      return { name: step.name, litres: freshLitres, electricKilowattHours: kilowattHours };
    }),
    consumers,
    services: serviceTotals(consumers),
    coldRooms: plan.line.flatMap((stage) => {
      const load = does(stage, "hold heads") ? coolingLoad(stage, day, plan) : null;
      return load === null ? [] : [{ name: stage.name, ...load }];
    }),
    total,
    litresPerTonne: perTonne(total.freshLitres, day),
    kilowattHoursPerTonne: energyPerTonne(total, day),
    codKilograms: codKilograms(total.freshLitres, plan),
  };
}

/** Electricity and fuel for a tonne of carcass, kWh; null without carcasses. */
export function energyPerTonne({ kilowattHours, fuelKilowattHours }: UtilityUse, day: DayRecord): number | null {
  return perTonne(kilowattHours + fuelKilowattHours, day);
}
