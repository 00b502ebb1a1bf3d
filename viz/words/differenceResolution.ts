/**
 * The half-width that sets the digits of a difference: that of its interval, or less where an end so near to 0 would be
 * rounded to it, so that an interval that leaves 0 out is seen to.
 */
export function differenceResolution(low: number, high: number): number {
  const nearest = Math.max(low, -high);
  return Math.min((high - low) / 2, nearest > 0 ? 4 * nearest : Number.POSITIVE_INFINITY);
}
