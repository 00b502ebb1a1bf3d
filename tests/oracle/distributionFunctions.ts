import type { Varying } from "../../sim/maths/random/index.ts";
import { cephes } from "../support/cephes.ts";

/** What a textbook says of a varying quantity, computed with the Cephes library: a second way beside the samplers. */
export interface Textbook {
  /** P(X <= x). */
  cdf(x: number): number;
  mean: number;
  variance: number;
}

/** Johnson, Kotz and Balakrishnan 1994, 1995 for every family; `empirical` and `constant` are not continuous and not here. */
export function textbook(varying: Varying): Textbook {
  switch (varying.family) {
    case "exponential":
      return { cdf: (x) => -Math.expm1(-x / varying.mean), mean: varying.mean, variance: varying.mean ** 2 };
    case "gamma":
      return gamma(1 / varying.cv ** 2, varying.mean);
    case "erlang":
      return gamma(varying.k, varying.mean);
    case "lognormal":
      return lognormal(varying.mean, varying.cv);
    case "weibull":
      return weibull(varying.mean, varying.cv);
    case "uniform": {
      const span = varying.max - varying.min;
      const cdf = (x: number) => within((x - varying.min) / span);
      return { cdf, mean: (varying.min + varying.max) / 2, variance: span ** 2 / 12 };
    }
    case "triangular":
      return triangular(varying.min, varying.mode, varying.max);
    case "pert":
      return pert(varying.min, varying.mode, varying.max);
    case "normal":
      return cutNormal(varying.mean, varying.sd);
    default:
      throw new Error(`${varying.family} has no continuous distribution function`);
  }
}

function within(share: number): number {
  return Math.min(1, Math.max(0, share));
}

function gamma(shape: number, mean: number): Textbook {
  return { cdf: (x) => cephes.igam(shape, (Math.max(0, x) * shape) / mean), mean, variance: mean ** 2 / shape };
}

function lognormal(mean: number, cv: number): Textbook {
  const sigma = Math.sqrt(Math.log(1 + cv * cv));
  const mu = Math.log(mean) - (sigma * sigma) / 2;
  const cdf = (x: number) => (x <= 0 ? 0 : cephes.ndtr((Math.log(x) - mu) / sigma));
  return { cdf, mean, variance: (mean * cv) ** 2 };
}

/** The shape whose coefficient of variation is `cv`, by bisection on the gamma functions of Cephes. */
function weibull(mean: number, cv: number): Textbook {
  let [low, high] = [0.2, 50];
  for (let round = 0; round < 200; round++) {
    const shape = (low + high) / 2;
    const found = Math.sqrt(cephes.gamma(1 + 2 / shape) / cephes.gamma(1 + 1 / shape) ** 2 - 1);
    if (found > cv) low = shape;
    else high = shape;
  }
  const scale = mean / cephes.gamma(1 + 1 / low);
  return { cdf: (x) => -Math.expm1(-((Math.max(0, x) / scale) ** low)), mean, variance: (mean * cv) ** 2 };
}

function triangular(min: number, mode: number, max: number): Textbook {
  const cdf = (x: number) => {
    if (x <= min) return 0;
    if (x >= max) return 1;
    if (x < mode) return (x - min) ** 2 / ((max - min) * (mode - min));
    return 1 - (max - x) ** 2 / ((max - min) * (max - mode));
  };
  const variance = (min ** 2 + mode ** 2 + max ** 2 - min * mode - min * max - mode * max) / 18;
  return { cdf, mean: (min + mode + max) / 3, variance };
}

function pert(min: number, mode: number, max: number): Textbook {
  const span = max - min;
  const alpha = 1 + (4 * (mode - min)) / span;
  const beta = 6 - alpha;
  return {
    cdf: (x) => cephes.incbet(alpha, beta, within((x - min) / span)),
    mean: (min + 4 * mode + max) / 6,
    variance: (span ** 2 * alpha * beta) / (36 * 7),
  };
}

function cutNormal(mean: number, sd: number): Textbook {
  const cut = -mean / sd;
  const kept = cephes.ndtr(-cut);
  const ratio = Math.exp((-cut * cut) / 2) / Math.sqrt(2 * Math.PI) / kept;
  const cdf = (x: number) => (x <= 0 ? 0 : 1 - cephes.ndtr((mean - x) / sd) / kept);
  return { cdf, mean: mean + sd * ratio, variance: sd * sd * (1 + cut * ratio - ratio * ratio) };
}
