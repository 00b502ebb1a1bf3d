import { biotOf, type CoolingBody, secondsPerFourier } from "./coolingBody.ts";
import { fourierUntil } from "./fourierUntil.ts";

/**
 * Seconds until the centre of the body, of one temperature all through at first, has come down to `toCelsius` in air of
 * constant temperature. 0 when it is there already, Infinity when the air is not colder than that. Relative error of the
 * arithmetic 1e-12; that of the model (constant properties and air, no evaporation, no radiation, no freezing, the
 * carcass a plain body) is far larger.
 */
export function coolingSeconds(body: CoolingBody, fromCelsius: number, toCelsius: number, airCelsius: number): number {
  if (fromCelsius <= toCelsius) return 0;
  if (toCelsius <= airCelsius) return Number.POSITIVE_INFINITY;
  const share = (toCelsius - airCelsius) / (fromCelsius - airCelsius);
  return fourierUntil(body.shape, biotOf(body), share) * secondsPerFourier(body);
}
