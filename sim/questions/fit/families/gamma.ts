import { digamma, jStat, nelderMead, trigamma } from "../../../maths/numeric/index.ts";
import type { Family, Fitted } from "../family.ts";
import { type Law, logLikelihood, logOfRest } from "../law.ts";
import { type Sample, sumOf } from "../sample.ts";
import { fittedOf } from "./fittedOf.ts";
import { quantileOf } from "./quantileOf.ts";

/** Beyond it the coefficient of variation is under 1 %, and the library's sums for one probability grow as long as this. */
const MAX_SHAPE = 10_000;

export function gammaLaw(shape: number, scale: number): Law {
  const mean = shape * scale;
  const cv = 1 / Math.sqrt(shape);
  const constant = -jStat.gammaln(shape) - shape * Math.log(scale);
  const below = (x: number) => (x <= 0 ? 0 : jStat.gamma.cdf(x, shape, scale));
  return {
    logDensity: (x) => (x <= 0 ? Number.NEGATIVE_INFINITY : constant + (shape - 1) * Math.log(x) - x / scale),
    below,
    logAbove: (x) => logOfRest(below(x)),
    quantile: quantileOf({ family: "gamma", mean, cv }),
    mean,
    sd: mean * cv,
  };
}

/**
 * Complete samples: the root of ln k - digamma(k) = ln(mean) - mean of ln x, by Newton's steps from the start of Minka
 * (2002), and scale = mean / k (Johnson, Kotz and Balakrishnan 1994, ch. 17). With open times both by direct search.
 */
export const gamma: Family = {
  name: "gamma",
  freedom: 2,
  takesOpen: true,
  fit(sample) {
    const complete = ofComplete(sample);
    if (complete.shape > MAX_SHAPE) return "times vary by less than 1 %, where it is the normal distribution";
    const { shape, scale } = sample.open.length === 0 ? complete : byDirectSearch(sample, complete);
    return gammaFit(shape, scale, sample);
  },
};

function gammaFit(shape: number, scale: number, sample: Sample): Fitted {
  const law = gammaLaw(shape, scale);
  return fittedOf("gamma", { shape, scale }, law, { family: "gamma", mean: law.mean, cv: law.sd / law.mean }, sample);
}

interface ShapeAndScale {
  shape: number;
  scale: number;
}

const MAX_STEPS = 50;

function ofComplete({ ended }: Sample): ShapeAndScale {
  const mean = sumOf(ended) / ended.length;
  const s = -sumOf(ended, (x) => Math.log(x / mean)) / ended.length;
  let shape = (3 - s + Math.sqrt((s - 3) ** 2 + 24 * s)) / (12 * s);
  for (let step = 0; step < MAX_STEPS; step++) {
    // Newton on 1 / k, where the equation is nearly straight (Minka 2002).
    const slope = 1 / shape - trigamma(shape);
    const next = 1 / (1 / shape + (Math.log(shape) - digamma(shape) - s) / (shape * shape * slope));
    const moved = Math.abs(next - shape);
    shape = next;
    if (moved <= 1e-13 * shape) break;
  }
  return { shape, scale: mean / shape };
}

function byDirectSearch(sample: Sample, start: ShapeAndScale): ShapeAndScale {
  const mean = (sumOf(sample.ended) + sumOf(sample.open)) / sample.ended.length;
  // Logarithms of mean and shape: both free, and nearly independent of each other.
  const { at } = nelderMead(
    ([logMean, logShape]) => {
      const shape = Math.exp(logShape!);
      if (shape > MAX_SHAPE) return Number.NaN;
      return -logLikelihood(gammaLaw(shape, Math.exp(logMean!) / shape), sample);
    },
    [Math.log(mean), Math.log(start.shape)],
    [0.2, 0.4],
  );
  const shape = Math.exp(at[1]!);
  return { shape, scale: Math.exp(at[0]!) / shape };
}
