import { jStat, power } from "../numeric/index.ts";
import type { Varying } from "../varying/index.ts";

/** Families whose quantile function is costly or not exact by specification, so that draws come from a table. */
export type TabledShape =
  | { family: "exponential" }
  | { family: "lognormal"; cv: number }
  | { family: "gamma"; cv: number }
  | { family: "weibull"; cv: number }
  /** Beta on [0, 1]. */
  | { family: "beta"; alpha: number; beta: number }
  /** Standard normal cut below at `cut` standard deviations (usually negative) and renormalised. */
  | { family: "normal"; cut: number };

/**
 * Quantile of the unit shape at lower-tail probability `u` (0 < u < 1), or at upper-tail probability `1 - u` when `upper`
 * is given instead: passing the small tail keeps its digits. Exponential, lognormal, gamma and Weibull have mean 1.
 * Inverses of gamma, beta and normal are jStat's, within 1e-8 relative for tails of 1e-10 and more (compared with Cephes).
 */
export function unitQuantile(shape: TabledShape, tail: number, upper: boolean): number {
  switch (shape.family) {
    case "exponential":
      return upper ? -Math.log(tail) : -Math.log1p(-tail);
    case "lognormal": {
      const sigma = Math.sqrt(Math.log1p(shape.cv * shape.cv));
      return Math.exp(sigma * standardNormal(tail, upper) - (sigma * sigma) / 2);
    }
    case "gamma": {
      const k = 1 / (shape.cv * shape.cv);
      return gammaQuantile(k, tail, upper) / k;
    }
    case "weibull": {
      const k = weibullShape(shape.cv);
      const hazard = upper ? -Math.log(tail) : -Math.log1p(-tail);
      return power(hazard, 1 / k) / Math.exp(jStat.gammaln(1 + 1 / k));
    }
    case "beta":
      return upper ? 1 - jStat.beta.inv(tail, shape.beta, shape.alpha) : jStat.beta.inv(tail, shape.alpha, shape.beta);
    case "normal":
      return cutNormal(shape.cut, tail, upper);
  }
}

/** By symmetry the small tail is always the lower one, where the inverse keeps its digits. */
function standardNormal(tail: number, upper: boolean): number {
  return upper ? -jStat.normal.inv(tail, 0, 1) : jStat.normal.inv(tail, 0, 1);
}

function gammaQuantile(k: number, tail: number, upper: boolean): number {
  return jStat.gamma.inv(upper ? 1 - tail : tail, k, 1);
}

function cutNormal(cut: number, tail: number, upper: boolean): number {
  const kept = standardNormalBelow(-cut);
  if (upper) return standardNormal(tail * kept, true);
  const below = standardNormalBelow(cut) + tail * kept;
  return below < 0.5 ? jStat.normal.inv(below, 0, 1) : standardNormal((1 - tail) * kept, true);
}

/** P(Z < z) of a standard normal; absolute error under 1e-15. */
export function standardNormalBelow(z: number): number {
  return jStat.normal.cdf(z, 0, 1);
}

const weibullShapes = new Map<number, number>();

/**
 * Weibull shape k whose coefficient of variation is `cv`, from cv^2 + 1 = G(1 + 2/k) / G(1 + 1/k)^2 by bisection on
 * log k (0.05 <= k <= 1000, monotone) down to the last bit that bisection can tell.
 */
export function weibullShape(cv: number): number {
  const known = weibullShapes.get(cv);
  if (known !== undefined) return known;
  const target = Math.log1p(cv * cv);
  let low = Math.log(0.05);
  let high = Math.log(1000);
  for (let round = 0; round < 200 && high - low > 1e-15; round++) {
    const middle = (low + high) / 2;
    const inverse = Math.exp(-middle);
    const logRatio = jStat.gammaln(1 + 2 * inverse) - 2 * jStat.gammaln(1 + inverse);
    if (logRatio > target) low = middle;
    else high = middle;
  }
  const shape = Math.exp((low + high) / 2);
  weibullShapes.set(cv, shape);
  return shape;
}

/** PERT on [min, max] as a beta distribution with shape 4: alpha + beta = 6 (Malcolm et al. 1959). */
export function pertBeta(varying: Extract<Varying, { family: "pert" }>): { alpha: number; beta: number } {
  const span = varying.max - varying.min;
  return {
    alpha: 1 + (4 * (varying.mode - varying.min)) / span,
    beta: 1 + (4 * (varying.max - varying.mode)) / span,
  };
}
