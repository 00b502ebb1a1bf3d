import { unknownFamily, type Varying } from "../varying/index.ts";
import { meanOf } from "./meanOf.ts";
import { pertBeta, standardNormalBelow } from "./quantile.ts";

/**
 * Squared coefficient of variation (variance / mean squared) of a varying quantity; for `normal` after the cut at 0, for
 * `empirical` of the values as a population. 0 for what never varies, and where the mean is 0.
 */
export function squaredCvOf(varying: Varying): number {
  const mean = meanOf(varying);
  return mean === 0 ? 0 : varianceOf(varying, mean) / mean ** 2;
}

function varianceOf(varying: Varying, mean: number): number {
  switch (varying.family) {
    case "constant":
      return 0;
    case "exponential":
      return mean ** 2;
    case "erlang":
      return mean ** 2 / varying.k;
    case "uniform":
      return (varying.max - varying.min) ** 2 / 12;
    case "triangular": {
      const { min, mode, max } = varying;
      return (min ** 2 + mode ** 2 + max ** 2 - min * mode - min * max - mode * max) / 18;
    }
    case "pert": {
      const { alpha, beta } = pertBeta(varying);
      const sum = alpha + beta;
      return ((varying.max - varying.min) ** 2 * alpha * beta) / (sum ** 2 * (sum + 1));
    }
    case "empirical":
      return varying.values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / varying.values.length;
    case "normal":
      return cutNormalVariance(varying.mean, varying.sd);
    case "lognormal":
    case "gamma":
    case "weibull":
      return (mean * varying.cv) ** 2;
    default:
      throw unknownFamily(varying);
  }
}

/** sd^2 (1 + a h - h^2) with a = -mean / sd and h the density at a over P(Z > a) (Johnson, Kotz and Balakrishnan 1994). */
function cutNormalVariance(mean: number, sd: number): number {
  if (sd === 0) return 0;
  const a = -mean / sd;
  const h = Math.exp((-a * a) / 2) / Math.sqrt(2 * Math.PI) / standardNormalBelow(-a);
  return sd ** 2 * (1 + a * h - h * h);
}
