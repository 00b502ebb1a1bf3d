import { airProperties } from "./airProperties.ts";
import { crossflowNusselt } from "./crossflowNusselt.ts";

/**
 * Heat-transfer coefficient in W/(m2 K) of a cylinder with air blown across it at so many metres a second (above 0). Air
 * properties at the air's own temperature; those of the film between air and a warm carcass would change it by less than
 * 1.2 % (measured up to 4 m/s), because conductivity and viscosity work against each other. Forced convection alone: evaporation
 * and radiation, which speed cooling up, and shelter by neighbours, which slows it down, are not in it.
 */
export function surfaceCoefficient(diameterMetres: number, airMetresPerSecond: number, airCelsius: number): number {
  const { viscosity, conductivity, prandtl } = airProperties(airCelsius);
  const nusselt = crossflowNusselt((airMetresPerSecond * diameterMetres) / viscosity, prandtl);
  return (nusselt * conductivity) / diameterMetres;
}
