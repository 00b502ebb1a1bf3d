import { type Estimate, estimate } from "./estimate.ts";
import { pairMeans } from "./pairMeans.ts";

/** An estimate from antithetic days: `n` counts pairs, `sd` is that of pair means, `min` and `max` those of days. */
export interface AntitheticEstimate extends Estimate {
  /** Days of whole pairs. */
  days: number;
  /** Half-width by that of as many independent days; below 1 the pairs helped. Null without spread or interval. */
  halfWidthRatio: number | null;
  words: string;
}

/**
 * Mean of antithetic days with its Student-t interval from pair means: the two days of a pair are no independent
 * observations, pairs are. `days[2i]` and `days[2i + 1]` are one pair. Null when no pair has values.
 *
 * The comparison with independent days takes the spread among all days as that of independent ones, and their t quantile;
 * it is an estimate itself.
 */
export function antitheticEstimate(days: readonly (number | null)[], confidence: number): AntitheticEstimate | null {
  const means = pairMeans(days);
  const found = estimate(means, confidence);
  if (found === null) return null;
  const whole = days.filter((_, day) => means[Math.floor(day / 2)] !== null);
  const all = estimate(whole, confidence)!;
  const known = found.halfWidth !== null && all.halfWidth !== null && all.halfWidth > 0;
  const halfWidthRatio = known ? found.halfWidth! / all.halfWidth! : null;
  const { min, max } = all;
  return { ...found, min, max, days: whole.length, halfWidthRatio, words: ratioWords(found.n, halfWidthRatio) };
}

function ratioWords(pairs: number, ratio: number | null): string {
  if (ratio === null) return `${pairs} antithetic pairs.`;
  const change = Math.round(Math.abs(1 - ratio) * 100);
  const words = ratio < 1 ? `about ${change} % narrower` : `about ${change} % wider`;
  return `${pairs} antithetic pairs: the interval is ${words} than that of ${2 * pairs} independent days would be.`;
}
