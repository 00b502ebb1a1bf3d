import type { CoolingBody, Material } from "./coolingBody.ts";
import { coolingSeconds } from "./coolingSeconds.ts";
import { equivalentRadius } from "./equivalentRadius.ts";
import { surfaceCoefficient } from "./surfaceCoefficient.ts";
import { meanTemperature } from "./temperatureAt.ts";

/** What a chilling time is computed from (the plan's type has the same shape). Degrees Celsius, metres, m/s; share of live weight. */
export interface ChillingConditions extends Material {
  startCelsius: number;
  airCelsius: number;
  coreCelsius: number;
  airMetresPerSecond: number;
  carcassLengthMetres: number;
  carcassShare: number;
}

/** Columns, one row per live weight, ascending by `STEP_KG`: seconds until the core is cold, joules taken out of one carcass by then. */
export interface ChillingCurve {
  weightsKg: number[];
  seconds: number[];
  joules: number[];
}

/** Live weights from 0.5 to 8 kg in steps of 50 g. */
const STEPS_PER_KG = 20;
const FIRST_STEP = 10;
const LAST_STEP = 160;

/**
 * Chilling time and heat over live weight: the carcass is a cylinder of its mass and the given length, cooled by air
 * blown across it. Both columns rise with weight (time 0 and no heat when the carcass is cold from the start; time Infinity
 * and heat down to the air's temperature when the air is not colder than the core is to be). Read off by straight lines
 * between rows, seconds and joules are within 0.03 % of the exact solution.
 *
 * Rounded to 1 ms and 1 mJ: exponentials and sines may differ in their last bit from one JavaScript engine to the next,
 * and a day must not.
 */
export function buildChillingCurve(conditions: ChillingConditions): ChillingCurve {
  const weightsKg = Array.from({ length: LAST_STEP - FIRST_STEP + 1 }, (_, row) => (FIRST_STEP + row) / STEPS_PER_KG);
  const rows = weightsKg.map((weight) => chillingOf(conditions, weight * conditions.carcassShare));
  return {
    weightsKg,
    seconds: rows.map(({ seconds }) => thousandths(seconds)),
    joules: rows.map(({ joules }) => thousandths(joules)),
  };
}

/** One carcass: seconds until its core is cold, joules taken out of it by then. */
export function chillingOf(conditions: ChillingConditions, carcassKg: number): { seconds: number; joules: number } {
  const { startCelsius, coreCelsius, airCelsius, specificHeat } = conditions;
  const body = cylinderOf(conditions, carcassKg);
  const seconds = coolingSeconds(body, startCelsius, coreCelsius, airCelsius);
  const mean = meanAfter(seconds, body, startCelsius, airCelsius);
  return { seconds, joules: carcassKg * specificHeat * (startCelsius - mean) };
}

function meanAfter(seconds: number, body: CoolingBody, startCelsius: number, airCelsius: number): number {
  if (seconds === 0) return startCelsius;
  if (seconds === Number.POSITIVE_INFINITY) return Math.min(startCelsius, airCelsius);
  return meanTemperature(body, seconds, startCelsius, airCelsius);
}

function cylinderOf(conditions: ChillingConditions, carcassKg: number): CoolingBody {
  const { conductivity, density, specificHeat, carcassLengthMetres, airMetresPerSecond, airCelsius } = conditions;
  const radius = equivalentRadius(carcassKg, carcassLengthMetres, density);
  const coefficient = surfaceCoefficient(2 * radius, airMetresPerSecond, airCelsius);
  return { shape: "cylinder", radius, surfaceCoefficient: coefficient, conductivity, density, specificHeat };
}

function thousandths(value: number): number {
  return Math.round(value * 1000) / 1000;
}
