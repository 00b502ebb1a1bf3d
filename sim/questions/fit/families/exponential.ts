import type { Family } from "../family.ts";
import type { Law } from "../law.ts";
import { sumOf } from "../sample.ts";
import { fittedOf } from "./fittedOf.ts";

export function exponentialLaw(mean: number): Law {
  return {
    logDensity: (x) => (x < 0 ? Number.NEGATIVE_INFINITY : -Math.log(mean) - x / mean),
    below: (x) => (x <= 0 ? 0 : -Math.expm1(-x / mean)),
    logAbove: (x) => -Math.max(0, x) / mean,
    quantile: (p) => -mean * Math.log1p(-p),
    mean,
    sd: mean,
  };
}

/** Mean = total time over the number of times that ended, open ones counted in the total (Epstein and Sobel 1953). */
export const exponential: Family = {
  name: "exponential",
  freedom: 1,
  takesOpen: true,
  fit(sample) {
    const mean = (sumOf(sample.ended) + sumOf(sample.open)) / sample.ended.length;
    const law = exponentialLaw(mean);
    return fittedOf("exponential", { mean }, law, { family: "exponential", mean }, sample);
  },
};
