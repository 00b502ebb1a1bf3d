import type { Family } from "../family.ts";
import { type Law, logOfRest } from "../law.ts";
import { betweenLimits } from "./betweenLimits.ts";
import { fittedOf } from "./fittedOf.ts";

export function triangularLaw(min: number, mode: number, max: number): Law {
  const span = max - min;
  const split = (mode - min) / span;
  const below = (x: number): number => {
    if (x <= min) return 0;
    if (x >= max) return 1;
    return x < mode ? (x - min) ** 2 / (span * (mode - min)) : 1 - (max - x) ** 2 / (span * (max - mode));
  };
  const density = (x: number): number => {
    if (x < min || x > max) return 0;
    if (x === mode) return 2 / span;
    return x < mode ? (2 * (x - min)) / (span * (mode - min)) : (2 * (max - x)) / (span * (max - mode));
  };
  return {
    logDensity: (x) => Math.log(density(x)),
    below,
    logAbove: (x) => logOfRest(below(x)),
    quantile: (p) =>
      p < split ? min + span * Math.sqrt(p * split) : min + span * (1 - Math.sqrt((1 - p) * (1 - split))),
    mean: (min + mode + max) / 3,
    sd: Math.sqrt((span * span * (1 - split + split * split)) / 18),
  };
}

/** Of each candidate mode, the logarithm of its product. */
export interface ModeProducts {
  /** Index of the best candidate. */
  best: number;
  logProducts: Float64Array;
}

/**
 * For known limits the most likely mode is one of the values: the one with the greatest product of (x_i - min) / (x_r -
 * min) over the values below it and of (max - x_i) / (max - x_r) over those above (Johnson and Kotz 1999; Kotz and van
 * Dorp 2004). All values lie inside the limits.
 */
export function modeProducts(sorted: Float64Array, min: number, max: number): ModeProducts {
  const n = sorted.length;
  const logProducts = new Float64Array(n);
  let above = 0;
  for (let r = n - 1; r >= 0; r--) {
    const here = Math.log(max - sorted[r]!);
    logProducts[r] = above - (n - 1 - r) * here;
    above += here;
  }
  let below = 0;
  let best = 0;
  for (let r = 0; r < n; r++) {
    const here = Math.log(sorted[r]! - min);
    // The first value can lie on the limit itself: then nothing lies below it, and 0 times minus infinity is 0.
    if (r > 0) logProducts[r]! += below - r * here;
    below += here;
    if (logProducts[r]! > logProducts[best]!) best = r;
  }
  return { best, logProducts };
}

/** All three by maximum likelihood: `modeProducts` for given limits, the limits by direct search. */
export const triangular: Family = {
  name: "triangular",
  freedom: 3,
  takesOpen: false,
  fit(sample) {
    const { ended } = sample;
    const greatest = (min: number, max: number): number => {
      const { best, logProducts } = modeProducts(ended, min, max);
      return ended.length * Math.log(2 / (max - min)) + logProducts[best]!;
    };
    const { min, max } = betweenLimits(ended, greatest);
    const mode = ended[modeProducts(ended, min, max).best]!;
    const law = triangularLaw(min, mode, max);
    return fittedOf("triangular", { min, mode, max }, law, { family: "triangular", min, mode, max }, sample);
  },
};
