import { jStat } from "../numeric/index.ts";

/**
 * Quantile of the standard normal distribution. `p` in (0, 1), else a RangeError. Relative error under 1e-9 for
 * 0.51 <= p <= 0.9999999 (measured against the Cephes library's `ndtri`, tested). The numbers come from jStat.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normalQuantile: p is ${p}; it must lie between 0 and 1`);
  if (p === 0.5) return 0;
  return p > 0.5 ? jStat.normal.inv(p, 0, 1) : -jStat.normal.inv(1 - p, 0, 1);
}
