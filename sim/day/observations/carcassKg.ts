import { chillLossNames, type Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS, DEAD_ON_ARRIVAL } from "../line/index.ts";
import { per } from "./row.ts";

const KILOGRAMS_PER_TONNE = 1000;

/** Carcasses as they leave, chilled. */
export function carcassOutKg({ masses }: DayRecord): number {
  return masses.outKg[CARCASS] ?? 0;
}

/** So much for a tonne of carcass; null without carcasses. */
export function perTonne(amount: number | null, day: DayRecord): number | null {
  return per(amount, carcassOutKg(day) / KILOGRAMS_PER_TONNE);
}

/** Carcasses as they are weighed to be sold: hot ones still have what the chiller takes from them. */
export function carcassSoldKg(day: DayRecord, plan: Plan): number {
  const cold = carcassOutKg(day);
  if (plan.presentation?.weighed !== "hot") return cold;
  return chillLossNames(plan.line).reduce((sum, name) => sum + (day.masses.byProductsKg[name] ?? 0), cold);
}

/** Live weight by the scales that the plan goes by: heavier at the farm, by what is lost on the way. */
export function weighedLiveKg(slaughterKg: number, { presentation }: Plan): number {
  return presentation?.liveWeight === "farm" ? slaughterKg / (1 - presentation.journeyLossShare!) : slaughterKg;
}

/** Live weight that is paid for: those dead on arrival are not (common practice, no source). */
export function livePaidKg({ masses }: DayRecord, plan: Plan): number {
  return weighedLiveKg(masses.liveKg - (masses.outKg[DEAD_ON_ARRIVAL] ?? 0), plan);
}
