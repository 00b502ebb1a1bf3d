/**
 * Sample quantile by definition 7 of Hyndman and Fan 1996 (The American Statistician 50(4)): linear between the order
 * statistics, with position 1 + (n - 1) p.
 *
 * `sorted`: ascending, finite, not changed. `p` from 0 to 1, else a RangeError. Null for an empty list.
 *
 * @example quantile([1, 2, 3, 4], 0.5) // 2.5
 */
export function quantile(sorted: readonly number[], p: number): number | null {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile: p is ${p}; it must lie from 0 to 1`);
  if (sorted.length === 0) return null;
  const position = (sorted.length - 1) * p;
  const below = Math.floor(position);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (high - low) * (position - below);
}
