import { biotOf, type CoolingBody, secondsPerFourier } from "./coolingBody.ts";
import { type BodyPlace, excessShare, SMALLEST_FOURIER } from "./excessShare.ts";

/**
 * Celsius at a place of the body after so many seconds in air of constant temperature: its centre, its surface, or the
 * mean over its volume, which says how much heat is out. Needs a Fourier number of 0.001 at least (5 s for a rabbit's
 * carcass); sooner is a RangeError.
 */
export function temperatureAt(
  body: CoolingBody,
  place: BodyPlace,
  seconds: number,
  fromCelsius: number,
  airCelsius: number,
): number {
  const fourier = seconds / secondsPerFourier(body);
  if (!(fourier >= SMALLEST_FOURIER)) throw new RangeError(`${seconds} s are too early for the series of this body`);
  return airCelsius + (fromCelsius - airCelsius) * excessShare(body.shape, biotOf(body), fourier, place);
}

/** Mean over the volume, see `temperatureAt`. */
export function meanTemperature(body: CoolingBody, seconds: number, fromCelsius: number, airCelsius: number): number {
  return temperatureAt(body, "mean", seconds, fromCelsius, airCelsius);
}
