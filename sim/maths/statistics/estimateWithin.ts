import { cutOff } from "./cutOff.ts";
import { type Estimate, estimate } from "./estimate.ts";
import { withinShares } from "./shareEstimate.ts";

/** What a mean can be: a share from 0 to 1, an amount or time from 0 on, or any number. */
export type Support = "share" | "amount" | "any";

/**
 * The mean of independent observations with an interval that fits what they can be: that of shares stays from 0 to 1 (see
 * `shareEstimate`); that of times and amounts is Student's t, cut off at 0; that of what may be negative is Student's t.
 *
 * @example estimateWithin("amount", [0, 0, 3], 0.95) // mean 1, from 0 to 5.3 instead of from -3.3
 */
export function estimateWithin(
  support: Support,
  values: readonly (number | null)[],
  confidence: number,
): Estimate | null {
  const found = estimate(values, confidence);
  return found === null ? null : within(support, found, confidence);
}

/** The same for a mean that was estimated otherwise, with its Student-t interval. */
export function within<Found extends Estimate>(support: Support, found: Found, confidence: number): Found {
  if (support === "share") return { ...found, ...withinShares(found, confidence) };
  return support === "amount" ? { ...found, ...cutOff(found) } : found;
}
