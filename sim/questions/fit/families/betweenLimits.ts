import { nelderMead } from "../../../maths/numeric/index.ts";

/** Of the log-likelihood, relative: far below what tells one fit from another. */
const TOLERANCE = 1e-9;

/**
 * The limits, below the least and above the greatest of the values, at which `of` is greatest; the lower one is never
 * under 0. `of` is the greatest log-likelihood for given limits.
 */
export function betweenLimits(
  sorted: Float64Array,
  of: (min: number, max: number) => number,
): { min: number; max: number } {
  const least = sorted[0]!;
  const greatest = sorted.at(-1)!;
  const span = greatest - least;
  // Logarithms of the distances: limits come as near to the values as they like, and never reach them.
  const minAt = (logDistance: number) => Math.max(0, least - Math.exp(logDistance));
  const maxAt = (logDistance: number) => greatest + Math.exp(logDistance);
  const near = Math.log(span / Math.sqrt(sorted.length));
  const nearest = Math.log(span) - 25;
  const { at } = nelderMead(
    ([low, high]) => (Math.min(low!, high!) < nearest ? Number.NaN : -of(minAt(low!), maxAt(high!))),
    [near, near],
    [1, 1],
    TOLERANCE,
  );
  return { min: minAt(at[0]!), max: maxAt(at[1]!) };
}
