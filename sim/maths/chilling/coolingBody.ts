import type { Shape } from "./seriesTerms.ts";

/** A body of one material in moving air. `radius` is half the thickness for a slab. Metres, W/(m K), kg/m3, J/(kg K), W/(m2 K). */
export interface CoolingBody extends Material {
  shape: Shape;
  radius: number;
  surfaceCoefficient: number;
}

/** W/(m K), kg/m3, J/(kg K). */
export interface Material {
  conductivity: number;
  density: number;
  specificHeat: number;
}

export function biotOf({ surfaceCoefficient, radius, conductivity }: CoolingBody): number {
  return (surfaceCoefficient * radius) / conductivity;
}

/** Seconds in which the Fourier number grows by one. */
export function secondsPerFourier({ radius, conductivity, density, specificHeat }: CoolingBody): number {
  return (radius * radius * density * specificHeat) / conductivity;
}
