import { AleaStream } from "./aleaStream.ts";

/** Source of uniforms on [0, 1) with 53 random bits. */
export interface UniformStream {
  next(): number;
  /** The quantiles at so many calls of `next`, one after another, into `values[from]` up to `values[to - 1]`. */
  fill(values: Float64Array, from: number, to: number, quantiles: Quantiles): void;
}

export interface Quantiles {
  /** Value at lower-tail probability `u`, 0 <= u <= 1. */
  quantile(u: number): number;
}

/**
 * The stream of one purpose of one stage in one replication (alea generator, 53-bit doubles).
 *
 * The four names alone decide the draws, so a change to one stage leaves the draws of every other stage as they were
 * (common random numbers). `antithetic` mirrors every draw to 1 - u; the caller's inversion has to bear u = 1 then.
 */
export function uniformStream(
  seed: string,
  replication: number,
  owner: string,
  purpose: string,
  antithetic = false,
): UniformStream {
  return new AleaStream(JSON.stringify([seed, replication, owner, purpose]), antithetic);
}
