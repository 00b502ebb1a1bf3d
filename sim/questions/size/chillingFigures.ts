import type { ChillingConditions } from "../../maths/chilling/index.ts";
import type { Demand } from "./demand.ts";

/** Carcass warm from the line; meat figures by analogy with other lean meat, the plan's own defaults. */
export const START_CELSIUS = 38;
const CONDUCTIVITY = 0.48;
const DENSITY = 1070;
const SPECIFIC_HEAT = 3500;

/** What the chilling time is computed from. */
export function chillingFigures({ chilling, steps }: Pick<Demand, "chilling" | "steps">): ChillingConditions {
  return {
    startCelsius: START_CELSIUS,
    airCelsius: chilling.air,
    coreCelsius: chilling.core,
    airMetresPerSecond: chilling.airSpeed,
    carcassLengthMetres: chilling.carcassLength,
    carcassShare: hotShare(steps),
    conductivity: CONDUCTIVITY,
    density: DENSITY,
    specificHeat: SPECIFIC_HEAT,
  };
}

/** What the steps before the chiller leave of the live weight. */
function hotShare(steps: Demand["steps"]): number {
  const before = steps
    .slice(
      0,
      steps.findIndex(({ work }) => work === "chilling"),
    )
    .filter(({ offLine }) => !offLine);
  return before.flatMap(({ figures }) => figures.takesOff ?? []).reduce((left, { share }) => left - share, 1);
}
