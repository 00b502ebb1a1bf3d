import { quantile } from "./quantile.ts";
import { quantileRanks } from "./quantileRanks.ts";

/** A sample quantile with an interval from order statistics; the bounds are null when there are not enough values. */
export interface QuantileEstimate {
  n: number;
  value: number;
  low: number | null;
  high: number | null;
  /** Exact confidence of the interval, at least the one asked for; null with the bounds. */
  cover: number | null;
}

/**
 * The `p` quantile of independent values with a distribution-free interval (see `quantileRanks`).
 * `values` in any order, nulls left out. Null when none is left ("not applicable").
 *
 * @example quantileInterval(values, 0.5, 0.95) // the median and its 95 % interval
 */
export function quantileInterval(
  values: readonly (number | null)[],
  p: number,
  confidence: number,
): QuantileEstimate | null {
  const sorted = values.filter((value) => value !== null).sort((a, b) => a - b);
  const value = quantile(sorted, p);
  if (value === null) return null;
  const ranks = quantileRanks(sorted.length, p, confidence);
  if (ranks === null) return { n: sorted.length, value, low: null, high: null, cover: null };
  return {
    n: sorted.length,
    value,
    low: sorted[ranks.low - 1]!,
    high: sorted[ranks.high - 1]!,
    cover: ranks.cover,
  };
}
