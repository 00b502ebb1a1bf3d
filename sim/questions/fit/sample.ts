/** Times of one column, in its own unit, each list ascending. */
export interface Sample {
  /** Times that were seen to their end. */
  ended: Float64Array;
  /** Times that were still open when the watching stopped: all that is known is that each lasted longer (right-censored). */
  open: Float64Array;
}

export function sampleOf(ended: readonly number[], open: readonly number[] = []): Sample {
  return { ended: Float64Array.from(ended).sort(), open: Float64Array.from(open).sort() };
}

/** Sum of a list by compensated addition, of `of` each value where given. */
export function sumOf(values: Float64Array, of: (value: number) => number = (value) => value): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const term = of(value) - lost;
    const next = sum + term;
    lost = next - sum - term;
    sum = next;
  }
  return sum;
}
