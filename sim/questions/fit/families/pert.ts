import { digamma, jStat, safeRoot, trigamma } from "../../../maths/numeric/index.ts";
import type { Family } from "../family.ts";
import { type Law, logOfRest } from "../law.ts";
import { sumOf } from "../sample.ts";
import { betweenLimits } from "./betweenLimits.ts";
import { fittedOf } from "./fittedOf.ts";
import { quantileOf } from "./quantileOf.ts";

/** alpha + beta of every PERT distribution (Malcolm, Roseboom, Clark and Fazar 1959). */
const TOTAL = 6;

/** Probabilities are within 1e-9 (jStat's incomplete beta function against that of Cephes). */
export function pertLaw(min: number, mode: number, max: number): Law {
  const span = max - min;
  const alpha = 1 + (4 * (mode - min)) / span;
  const constant = logConstant(alpha) - (TOTAL - 1) * Math.log(span);
  const below = (x: number): number => {
    if (x <= min) return 0;
    return x >= max ? 1 : jStat.beta.cdf((x - min) / span, alpha, TOTAL - alpha);
  };
  const power = (base: number, exponent: number) => (exponent === 0 ? 0 : exponent * Math.log(base));
  return {
    logDensity: (x) =>
      x < min || x > max
        ? Number.NEGATIVE_INFINITY
        : constant + power(x - min, alpha - 1) + power(max - x, TOTAL - 1 - alpha),
    below,
    logAbove: (x) => logOfRest(below(x)),
    quantile: quantileOf({ family: "pert", min, mode, max }),
    mean: (min + 4 * mode + max) / 6,
    sd: (span * Math.sqrt((alpha * (TOTAL - alpha)) / (TOTAL + 1))) / TOTAL,
  };
}

/** -ln B(alpha, 6 - alpha). */
function logConstant(alpha: number): number {
  return jStat.gammaln(TOTAL) - jStat.gammaln(alpha) - jStat.gammaln(TOTAL - alpha);
}

/** All three by maximum likelihood: the mode for given limits is a root, the limits are found by direct search. */
export const pert: Family = {
  name: "pert",
  freedom: 3,
  takesOpen: false,
  fit(sample) {
    const { ended } = sample;
    const sums = (min: number, max: number): [low: number, high: number] => [
      sumOf(ended, (x) => Math.log(x - min)),
      sumOf(ended, (x) => Math.log(max - x)),
    ];
    const greatest = (min: number, max: number): number => {
      const [low, high] = sums(min, max);
      const alpha = bestAlpha((low - high) / ended.length);
      const each = logConstant(alpha) - (TOTAL - 1) * Math.log(max - min);
      return ended.length * each + (alpha - 1) * low + (TOTAL - 1 - alpha) * high;
    };
    const { min, max } = betweenLimits(ended, greatest);
    const [low, high] = sums(min, max);
    const mode = min + ((max - min) * (bestAlpha((low - high) / ended.length) - 1)) / 4;
    const law = pertLaw(min, mode, max);
    return fittedOf("pert", { min, mode, max }, law, { family: "pert", min, mode, max }, sample);
  },
};

/**
 * The alpha from 1 to 5 that is likeliest for given limits: where digamma(alpha) - digamma(6 - alpha), which rises, is
 * the mean of ln(x - min) - ln(max - x).
 */
function bestAlpha(mean: number): number {
  const at = (alpha: number): [number, number] => [
    digamma(alpha) - digamma(TOTAL - alpha) - mean,
    trigamma(alpha) + trigamma(TOTAL - alpha),
  ];
  const [least, most] = [1, TOTAL - 1];
  if (at(least)[0] >= 0) return least;
  return at(most)[0] <= 0 ? most : safeRoot(at, least, most);
}
