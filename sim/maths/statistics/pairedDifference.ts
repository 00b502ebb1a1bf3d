import { type Estimate, estimate } from "./estimate.ts";

/** Mean difference to the base over the days that both have, with its interval. */
export interface PairedDifference extends Estimate {
  /** Relative to the base's mean; null when that is 0, and on an interval scale. */
  relativeLow: number | null;
  relativeHigh: number | null;
  /** The interval leaves 0 out. */
  shown: boolean;
}

/** Whether the values have a natural zero, so that a share of them means something: "interval" is for times of day. */
export type Scale = "ratio" | "interval";

/** Values that differ by no more than this share of themselves differ by the rounding of their own arithmetic. */
const ROUNDING = 1e-12;

/**
 * Difference of a variant to the base under common random numbers: variant minus base, day by day
 * (the paired-t interval; any statistics text, e.g. Snedecor and Cochran 1989, ch. 6).
 *
 * `variantValues[i]` and `baseValues[i]` must come from the same replication. A pair with a null in it is left out and
 * `n` says how many remain; values that agree to 12 digits count as equal. Null when no pair is left ("not applicable"); with one pair the interval is null and the
 * difference is not `shown`.
 */
export function pairedDifference(
  variantValues: readonly (number | null)[],
  baseValues: readonly (number | null)[],
  confidence: number,
  scale: Scale = "ratio",
): PairedDifference | null {
  if (variantValues.length !== baseValues.length) {
    throw new RangeError(
      `pairedDifference: ${variantValues.length} values against ${baseValues.length}; they must be pairs`,
    );
  }
  const differences: number[] = [];
  const bases: number[] = [];
  for (let replication = 0; replication < baseValues.length; replication++) {
    const variant = variantValues[replication]!;
    const base = baseValues[replication]!;
    if (variant === null || base === null) continue;
    const difference = variant - base;
    const size = Math.max(Math.abs(variant), Math.abs(base));
    differences.push(Math.abs(difference) <= ROUNDING * size ? 0 : difference);
    bases.push(base);
  }
  const found = estimate(differences, confidence);
  const baseMean = estimate(bases, confidence)?.mean;
  if (found === null || baseMean === undefined) return null;
  const relative = (bound: number | null): number | null =>
    bound === null || baseMean === 0 || scale === "interval" ? null : bound / Math.abs(baseMean);
  return {
    ...found,
    relativeLow: relative(found.low),
    relativeHigh: relative(found.high),
    shown: found.low !== null && found.high !== null && (found.low > 0 || found.high < 0),
  };
}
