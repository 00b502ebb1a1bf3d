import type { SerialStation } from "../../sim/questions/estimate/decompose.ts";

/** Stations of a serial line as the analytic estimate takes them; `mean` is of one position. */
export function serial(mean: number, places: number, { positions = 1, squaredCv = 1 } = {}): SerialStation {
  return { work: { seconds: mean / positions, squaredCv, stops: [] }, positions, places };
}

/** One position that fails at this rate while it works. */
export function failing(
  mean: number,
  places: number,
  squaredCv: number,
  failure: number,
  repair: number,
): SerialStation {
  const chance = -Math.expm1(-failure * mean);
  const stops = [{ chance, seconds: (failure * mean * repair) / chance }];
  return { work: { seconds: mean, squaredCv, stops }, positions: 1, places };
}
