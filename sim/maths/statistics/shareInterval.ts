import { normalQuantile } from "./normalQuantile.ts";

/**
 * Two-sided interval for a share from `count` cases in `n` independent ones, by the score method of Wilson 1927
 * (Journal of the American Statistical Association 22). Stays within 0..1 and says something even when count is 0 or n.
 *
 * Null when n is 0 ("not enough data"). A count outside 0..n or a confidence outside 0..1 is refused. Heads of one day
 * that wait behind each other are not independent: use it for shares of days or of inspected samples.
 *
 * @example shareInterval(0, 50, 0.95) // { share: 0, low: 0, high: 0.0713 }
 */
export function shareInterval(
  count: number,
  n: number,
  confidence: number,
): { share: number; low: number; high: number } | null {
  if (!(count >= 0 && count <= n)) throw new RangeError(`shareInterval: ${count} of ${n}; it must be from 0 to ${n}`);
  if (n === 0) return null;
  const z = normalQuantile((1 + confidence) / 2);
  const share = count / n;
  const shrink = 1 + (z * z) / n;
  const centre = (share + (z * z) / (2 * n)) / shrink;
  const half = (z / shrink) * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  // At the ends the bound is exactly 0 or 1; subtraction would leave a rounding error.
  return { share, low: count === 0 ? 0 : centre - half, high: count === n ? 1 : centre + half };
}
