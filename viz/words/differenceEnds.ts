import type { Difference } from "../contract.ts";

/** The interval of a difference that is shown: that of all comparisons at once where the verdict answers for all. */
export function differenceEnds(difference: Difference): {
  halfWidth: number | null;
  low: number | null;
  high: number | null;
} {
  const { joint, familyLow, familyHigh, low, high, halfWidth } = difference;
  if (!joint || familyLow === null || familyHigh === null) return { halfWidth, low, high };
  return { halfWidth: (familyHigh - familyLow) / 2, low: familyLow, high: familyHigh };
}
