import { adjustedP } from "./adjustedP.ts";
import { bonferroniQuantile } from "./bonferroniQuantile.ts";
import { type PairedDifference, pairedDifference, type Scale } from "./pairedDifference.ts";
import { pairedTest } from "./pairedTest.ts";

/** A difference to the base as one of a family of comparisons; `low` and `high` are those of the single interval. */
export interface Comparison extends PairedDifference {
  /** Two-sided p-value by itself; null with the interval. */
  p: number | null;
  holmP: number | null;
  bonferroniP: number | null;
  benjaminiHochbergP: number | null;
  /**
   * The interval that allows for all comparisons. Those of a response hold at once with the study's confidence
   * (Bonferroni t); where the error rate is "false discovery", their false coverage rate is kept instead.
   */
  familyLow: number | null;
  familyHigh: number | null;
  /** How many comparisons the family has. */
  comparisons: number;
}

/** Which error probability a family of comparisons keeps; see `compareAll`. */
export type ErrorRate = "family-wise" | "false discovery" | "per comparison";

export interface ComparisonOptions {
  confidence: number;
  errorRate: ErrorRate;
  /** "ratio" where it is left out. */
  scale?: Scale | undefined;
}

/**
 * Compares every variant with the base under common random numbers, for one response: paired differences, p-values, and
 * intervals that allow for all comparisons. `values[variant][replication]`; the result has one entry per variant, null
 * for the base and where no pair has values.
 *
 * Interval and verdict are one procedure: a difference is `shown` when the interval it is to be told with leaves 0 out, and
 * only then. That interval is, by error rate,
 * - "family-wise": Bonferroni's (Dunn 1961, Journal of the American Statistical Association 56). All of them hold at
 *   once whatever the comparisons have in common, so the chance of even one false difference, or of one told in the
 *   wrong direction, is at most 1 - confidence. Holm's step-down test shows a little more, but has no two-sided
 *   intervals that would go with it; its p-value is given for those who ask.
 * - "false discovery": at level 1 - R q / m, with R of m comparisons shown at the rate q = 1 - confidence (Benjamini and
 *   Yekutieli 2005, Journal of the American Statistical Association 100). It leaves 0 out exactly where the test of
 *   Benjamini and Hochberg shows a difference, and of the intervals of differences shown at most q miss on average.
 * - "per comparison": the single interval.
 *
 * The family is the variants for one response: a study that reads several responses asks several families.
 */
export function compareAll(
  values: readonly (readonly (number | null)[])[],
  base: number,
  { confidence, errorRate, scale }: ComparisonOptions,
): (Comparison | null)[] {
  const differences = values.map((list, variant) =>
    variant === base ? null : pairedDifference(list, values[base]!, confidence, scale),
  );
  const tested = differences.flatMap((difference, variant) => {
    const test = difference === null ? null : pairedTest(difference);
    return test === null ? [] : [{ variant, p: test.p }];
  });
  const adjusted = adjustedP(tested.map(({ p }) => p));
  const places = new Map(tested.map(({ variant }, index) => [variant, index]));
  const shared = errorRate === "false discovery" ? discovered(adjusted.benjaminiHochberg, confidence) : 1;
  return differences.map((difference, variant) => {
    if (difference === null) return null;
    const index = places.get(variant) ?? -1;
    const pValues = {
      p: tested[index]?.p ?? null,
      holmP: adjusted.holm[index] ?? null,
      bonferroniP: adjusted.bonferroni[index] ?? null,
      benjaminiHochbergP: adjusted.benjaminiHochberg[index] ?? null,
    };
    const family = familyInterval(difference, tested.length / shared, confidence);
    const bare = { ...difference, ...pValues, ...family, comparisons: tested.length };
    const shown = errorRate === "per comparison" ? difference.shown : leavesOutZero(family);
    return { ...bare, shown };
  });
}

/** How many comparisons share one error: those that are shown, at least one. */
function discovered(p: readonly number[], confidence: number): number {
  return Math.max(1, p.filter((value) => value <= 1 - confidence).length);
}

function familyInterval({ n, mean, sd }: PairedDifference, comparisons: number, confidence: number) {
  if (n < 2) return { familyLow: null, familyHigh: null };
  const halfWidth = (bonferroniQuantile(comparisons, confidence, n - 1) * sd) / Math.sqrt(n);
  return { familyLow: mean - halfWidth, familyHigh: mean + halfWidth };
}

function leavesOutZero({ familyLow, familyHigh }: Pick<Comparison, "familyLow" | "familyHigh">): boolean {
  return familyLow !== null && familyHigh !== null && (familyLow > 0 || familyHigh < 0);
}
