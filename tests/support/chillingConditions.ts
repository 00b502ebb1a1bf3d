import type { Chilling } from "../../sim/asked/plan/plan.ts";

/** Air at 2 degrees, down to a core of 7: figures of no plant in particular. */
export const CHILLING: Chilling = {
  startCelsius: 38,
  airCelsius: 2,
  coreCelsius: 7,
  airMetresPerSecond: 1.5,
  carcassLengthMetres: 0.4,
  carcassShare: 0.55,
  conductivity: 0.47,
  density: 1060,
  specificHeat: 3500,
};
