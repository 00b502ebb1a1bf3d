import { jStat } from "../../../maths/numeric/index.ts";

const HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);
/** Beyond this many standard deviations 1 - P has lost too many digits. */
const FAR = 5;
const TERMS = 60;

/** ln of the standard normal density. */
export function logNormalDensity(z: number): number {
  return -0.5 * z * z - HALF_LOG_TWO_PI;
}

/** P(Z <= z); absolute error under 1e-15 (jStat). */
export function normalBelow(z: number): number {
  return jStat.normal.cdf(z, 0, 1);
}

/** ln P(Z > z), digits kept in the upper tail. */
export function logNormalAbove(z: number): number {
  return z < FAR ? Math.log(normalBelow(-z)) : logNormalDensity(z) - Math.log(normalHazard(z));
}

/**
 * Density over P(Z > z). From 5 on by the continued fraction z + 1/(z + 2/(z + 3/(z + ...))) (Abramowitz and Stegun
 * 1964, 26.2.14). Relative error under 1e-8 (tested against Cephes).
 */
export function normalHazard(z: number): number {
  if (z < FAR) return Math.exp(logNormalDensity(z)) / normalBelow(-z);
  let fraction = z;
  for (let term = TERMS; term >= 1; term--) fraction = z + term / fraction;
  return fraction;
}
