import type { ResponseInfo } from "../observations/index.ts";
import type { ErrorRate } from "../study/index.ts";
import { adjustedP } from "./adjustedP.ts";
import { bonferroniQuantile } from "./bonferroniQuantile.ts";
import { comparisonWords } from "./comparisonWords.ts";
import { type Difference, pairedDifference } from "./pairedDifference.ts";
import { pairedTest } from "./pairedTest.ts";

/** A difference to the base as one of a family of comparisons; `low` and `high` are those of the single interval. */
export interface Comparison extends Difference {
  /** Two-sided p-value by itself; null with the interval. */
  p: number | null;
  holmP: number | null;
  bonferroniP: number | null;
  benjaminiHochbergP: number | null;
  /** Bonferroni t interval: those of all comparisons hold at once with the study's confidence. */
  familyLow: number | null;
  familyHigh: number | null;
  /** How many comparisons the family has. */
  comparisons: number;
}

export interface ComparisonOptions {
  confidence: number;
  errorRate: ErrorRate;
}

/**
 * Compares every variant with the base under common random numbers, for one response: paired differences, tests, and
 * intervals that hold all at once. `values[variant][replication]`; the result has one entry per variant, null for the
 * base and where no pair has values.
 *
 * What `shown` goes by: "family-wise": Holm's adjusted p-value; "false discovery": Benjamini and Hochberg's; "per
 * comparison": the single interval. Holm's test has no intervals of its own that would suit two sides, so the intervals
 * of the family are Bonferroni's: they hold at once, but are a little wider than Holm's test needs. A difference may
 * therefore be shown whose family interval holds 0; its words say so. The family is the variants for one response: a
 * study that reads several responses asks several families.
 */
export function compareAll(
  values: readonly (readonly (number | null)[])[],
  base: number,
  { confidence, errorRate }: ComparisonOptions,
  info: ResponseInfo,
): (Comparison | null)[] {
  const differences = values.map((list, variant) =>
    variant === base ? null : pairedDifference(list, values[base]!, confidence, info),
  );
  const tested = differences.flatMap((difference, variant) => {
    const test = difference === null ? null : pairedTest(difference);
    return test === null ? [] : [{ variant, p: test.p }];
  });
  const adjusted = adjustedP(tested.map(({ p }) => p));
  const places = new Map(tested.map(({ variant }, index) => [variant, index]));
  return differences.map((difference, variant) => {
    if (difference === null) return null;
    const index = places.get(variant) ?? -1;
    const pValues = {
      p: tested[index]?.p ?? null,
      holmP: adjusted.holm[index] ?? null,
      bonferroniP: adjusted.bonferroni[index] ?? null,
      benjaminiHochbergP: adjusted.benjaminiHochberg[index] ?? null,
    };
    const family = familyInterval(difference, tested.length, confidence);
    const bare = { ...difference, ...pValues, ...family, comparisons: tested.length };
    const shown = isShown(bare, confidence, errorRate);
    return { ...bare, shown, words: comparisonWords({ ...bare, shown }, { confidence, errorRate }, info) };
  });
}

function familyInterval({ n, mean, sd }: Difference, comparisons: number, confidence: number) {
  if (n < 2) return { familyLow: null, familyHigh: null };
  const halfWidth = (bonferroniQuantile(comparisons, confidence, n - 1) * sd) / Math.sqrt(n);
  return { familyLow: mean - halfWidth, familyHigh: mean + halfWidth };
}

function isShown(comparison: Comparison, confidence: number, errorRate: ErrorRate): boolean {
  if (errorRate === "per comparison") return comparison.shown;
  const p = errorRate === "family-wise" ? comparison.holmP : comparison.benjaminiHochbergP;
  return p !== null && p <= 1 - confidence;
}
