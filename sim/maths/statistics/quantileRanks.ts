import { jStat } from "../numeric/index.ts";

/** Ranks count from 1; the interval runs from the `low`-th to the `high`-th smallest value. */
export interface QuantileRanks {
  low: number;
  high: number;
  /** Exact probability that the interval covers the quantile, whatever continuous law the values have. */
  cover: number;
}

/**
 * Which order statistics enclose the `p` quantile of a sample of `n` with at least the given confidence, each tail
 * holding at most half of the rest (Conover 1999, *Practical Nonparametric Statistics*, section 3.2). No law is
 * assumed.
 *
 * Null when `n` is too small for such an interval ("not enough data"). `p` and `confidence` between 0 and 1. O(n).
 *
 * @example quantileRanks(20, 0.5, 0.95) // 6th to 15th, cover 0.9586
 */
export function quantileRanks(n: number, p: number, confidence: number): QuantileRanks | null {
  if (!(p > 0 && p < 1 && confidence > 0 && confidence < 1)) {
    throw new RangeError(`quantileRanks: p is ${p} and confidence ${confidence}; both must lie between 0 and 1`);
  }
  const tail = (1 - confidence) / 2;
  // below: probability that fewer than `low` values lie under the quantile; above: that at least `high` do.
  let low = 0;
  let below = 0;
  for (let next = binomial(n, low, p); below + next <= tail; next = binomial(n, low, p)) {
    below += next;
    low += 1;
  }
  let high = n + 1;
  let above = 0;
  for (let next = binomial(n, high - 1, p); above + next <= tail; next = binomial(n, high - 1, p)) {
    above += next;
    high -= 1;
  }
  if (low < 1 || high > n) return null;
  return { low, high, cover: 1 - below - above };
}

/** Probability of exactly `k` successes in `n` trials. */
function binomial(n: number, k: number, p: number): number {
  if (k < 0 || k > n) return Number.POSITIVE_INFINITY;
  return Math.exp(logBinomial(n, k) + k * Math.log(p) + (n - k) * Math.log1p(-p));
}

/** Natural logarithm of "n over k", 0 <= k <= n. Logarithms because the factorials overflow from n = 171 on. */
export function logBinomial(n: number, k: number): number {
  return jStat.gammaln(n + 1) - jStat.gammaln(k + 1) - jStat.gammaln(n - k + 1);
}
