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
