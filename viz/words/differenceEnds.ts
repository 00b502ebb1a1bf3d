import type { Difference } from "../contract.ts";

/** The interval that the verdict on a difference goes by: the one that allows for all comparisons where several were made. */
export function differenceEnds(difference: Difference): {
  halfWidth: number | null;
  low: number | null;
  high: number | null;
} {
  const { joint, familyLow, familyHigh, low, high, halfWidth } = difference;
  if (!joint || familyLow === null || familyHigh === null) return { halfWidth, low, high };
  return { halfWidth: (familyHigh - familyLow) / 2, low: familyLow, high: familyHigh };
}
