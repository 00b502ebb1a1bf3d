import type { ChillingConditions } from "../chilling/index.ts";
import type { Demand } from "./demand.ts";

/** Carcass warm from the line; meat figures by analogy with other lean meat, the plan's own defaults. */
export const START_CELSIUS = 38;
const CONDUCTIVITY = 0.48;
const DENSITY = 1070;
const SPECIFIC_HEAT = 3500;

/** What the chilling time is computed from. */
export function chillingFigures({ chilling, animals }: Demand): ChillingConditions {
  return {
    startCelsius: START_CELSIUS,
    airCelsius: chilling.air,
    coreCelsius: chilling.core,
    airMetresPerSecond: chilling.airSpeed,
    carcassLengthMetres: chilling.carcassLength,
    carcassShare: animals.yield,
    conductivity: CONDUCTIVITY,
    density: DENSITY,
    specificHeat: SPECIFIC_HEAT,
  };
}
