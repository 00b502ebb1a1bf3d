import type { Plan, Utilities } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { type Step, steps } from "../line/index.ts";
import { coolingLoad } from "./coolingLoad.ts";
import { serviceTotals, serviceUses } from "./plantServices.ts";
import { stageRecordOf } from "./stageRecordOf.ts";
import { openSeconds, workingSeconds } from "./workingTime.ts";

/** What one stage used: litres of fresh water (all of it leaves as waste water), litres used once more, kilowatt-hours. */
export interface UtilityUse {
  freshLitres: number;
  reusedLitres: number;
  /** Electricity. */
  kilowattHours: number;
  /** Of the consumers beside the stages, which alone heat water. */
  fuelKilowattHours: number;
}

/**
 * Use of one stage on one day. By the head (crate steps: by the crate) as often as work ended there; by the hour while the
 * plant is at work, in a dwell stage until the last carcass is out. Of wash water the share that is used again is not
 * drawn afresh.
 */
export function utilityUse(step: Step, day: DayRecord, plan: Plan): UtilityUse {
  const { waterPerHead, waterPerHour, energyPerHead, powerKilowatts } = utilitiesOf(step);
  const processed = stageRecordOf(day, step.name, does(step, "handle crates"))?.processed ?? 0;
  const hours = runningHours(step, day, plan);
  const litres = waterPerHead * processed + waterPerHour * hours;
  const reused = does(step, "handle crates") ? step.of.waterReusedShare : 0;
  return {
    freshLitres: litres * (1 - reused),
    reusedLitres: litres * reused,
    kilowattHours: energyPerHead * processed + powerKilowatts * hours + coldKilowattHours(step, day, plan),
    fuelKilowattHours: 0,
  };
}

/** Of a chiller whose electricity follows from its heat. */
function coldKilowattHours(step: Step, day: DayRecord, plan: Plan): number {
  return does(step, "hold heads") ? (coolingLoad(step.of, day, plan)?.electricKilowattHours ?? 0) : 0;
}

/** Hours in which what is used by the hour is used. */
export function runningHours(step: Step, day: DayRecord, plan: Plan): number {
  return (does(step, "hold heads") ? openSeconds(day, plan) : workingSeconds(day, plan)) / 3600;
}

/** Use of the whole plant, what stands beside the stages included. */
export function plantUse(day: DayRecord, plan: Plan): UtilityUse {
  const services = serviceTotals(serviceUses(day, plan));
  const uses = steps(plan).map((step) => utilityUse(step, day, plan));
  const sum = (of: (use: UtilityUse) => number, first: number) => uses.reduce((total, use) => total + of(use), first);
  return {
    freshLitres: sum(({ freshLitres }) => freshLitres, services.litres),
    reusedLitres: sum(({ reusedLitres }) => reusedLitres, 0),
    kilowattHours: sum(({ kilowattHours }) => kilowattHours, services.electricKilowattHours),
    fuelKilowattHours: services.heatKilowattHours * (plan.utilities?.fuelPerHeat ?? 0),
  };
}

export function utilitiesOf(step: Step): Utilities {
  return step.of.utilities;
}

export function usesWater(step: Step): boolean {
  const { waterPerHead, waterPerHour } = utilitiesOf(step);
  return waterPerHead > 0 || waterPerHour > 0;
}

export function usesEnergy(step: Step): boolean {
  const { energyPerHead, powerKilowatts } = utilitiesOf(step);
  return energyPerHead > 0 || powerKilowatts > 0 || (does(step, "hold heads") && step.of.cooling !== undefined);
}
