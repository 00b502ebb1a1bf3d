import { cutOff } from "./cutOff.ts";
import { type Estimate, estimate } from "./estimate.ts";
import { exactShareInterval } from "./exactShareInterval.ts";

/**
 * Mean of daily shares (each from 0 to 1, else a RangeError) with an interval that stays from 0 to 1. Days are the
 * independent observations, not heads, whose waits hang together, so the spread between days sets the width: the Student-t
 * interval of the mean's logit by the delta method, turned back (as for cluster samples: Korn and Graubard 1998, Survey
 * Methodology 24; Franco, Little, Louis and Slud 2019, Journal of Survey Statistics and Methodology 7). Every day counts
 * alike, however many heads it had.
 *
 * Where all days show none (or all show all) there is no spread to go by, and nothing is known of how bad a bad day
 * would be. The mean share is then at most the share of days that show any, which has an exact bound (Clopper and
 * Pearson 1934): 8.8 % after 40 days without. Days that are alike at another share leave an interval without width.
 *
 * `halfWidth` is half of the interval's width; the mean is not its middle. What was measured of its coverage stands in
 * this room's README.
 */
export function shareEstimate(values: readonly (number | null)[], confidence: number): Estimate | null {
  const wrong = values.find((value) => value !== null && !(value >= 0 && value <= 1));
  if (wrong !== undefined) throw new RangeError(`shareEstimate: a share is ${wrong}; it must lie from 0 to 1`);
  const found = estimate(values, confidence);
  return found === null ? null : withinShares(found, confidence);
}

/**
 * The same for a mean share that was estimated otherwise (say with a control variate): `halfWidth` is that of its
 * Student-t interval. Values beyond 1 are no shares of a
 * whole (output against a rated speed, say): their interval is cut off at 0 alone, as is that of a mean that a control has
 * carried out of 0 to 1, at both ends.
 */
export function withinShares(found: Estimate, confidence: number): Estimate {
  const { n, mean, halfWidth, min, max } = found;
  if (halfWidth === null) return found;
  if (max > 1) return cutOff(found);
  if (max === 0 || min === 1) {
    const { low, high } = exactShareInterval(max === 0 ? 0 : n, n, confidence)!;
    return { ...found, halfWidth: (high - low) / 2, low, high };
  }
  if (!(mean > 0 && mean < 1)) return cutOff(found, 1);
  if (halfWidth === 0) return found;
  const reach = halfWidth / (mean * (1 - mean));
  const middle = Math.log(mean / (1 - mean));
  const [low, high] = [fromLogit(middle - reach), fromLogit(middle + reach)];
  return { ...found, halfWidth: (high - low) / 2, low, high };
}

function fromLogit(value: number): number {
  return 1 / (1 + Math.exp(-value));
}
