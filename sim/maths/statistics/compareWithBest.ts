import { bonferroniQuantile } from "./bonferroniQuantile.ts";
import { RunningMoments } from "./runningMoments.ts";

/** A variant against the best of all the others. */
export interface AgainstBest {
  /** Mean minus the best mean among the others, in the response's own unit and sign. */
  gap: number;
  /** Interval of that gap. One end is 0 where the data leave open only one side. */
  low: number;
  high: number;
  /** False: the variant is not the best, at the joint confidence of all statements. */
  mayBeBest: boolean;
}

/**
 * Multiple comparisons with the best (Hsu 1984, Annals of Statistics 12) under common random numbers: for every variant
 * an interval of how far it is from the best of the others. All intervals hold at once with at least the given
 * confidence.
 *
 * The t quantile is the two-sided one of `compareAll`, though one side would do: so a variant that is ruled out by the
 * base, or rules it out, is also shown to differ from the base, and the other way round.
 *
 * `values[variant][replication]`: same replication, same random numbers; a replication in which any variant has no value
 * is left out. Pairwise differences have their own variances, and Bonferroni's inequality covers the k - 1 comparisons
 * with the one best, so nothing is assumed of the correlations (compare Yang and Nelson 1991, Operations Research 39,
 * and Nelson and Matejcik 1995, Management Science 41, who assume more and get a little narrower). Null with fewer than two
 * variants or two whole replications.
 */
export function compareWithBest(
  values: readonly (readonly (number | null)[])[],
  better: "more" | "less",
  confidence: number,
): AgainstBest[] | null {
  const sign = better === "more" ? 1 : -1;
  const rows = wholeRows(values, sign);
  const k = values.length;
  const n = rows.length;
  if (k < 2 || n < 2) return null;
  const t = bonferroniQuantile(k - 1, confidence, n - 1);
  const pairs = pairwise(rows, k, t);
  const most = pairs.map((row) => Math.min(...row.map(({ mean, width }) => mean + width)));
  // Exactly 0 is a tie without spread: both may be best.
  const candidates = most.flatMap((high, variant) => (high >= 0 ? [variant] : []));
  return pairs.map((row, variant) => {
    const gap = Math.min(...row.map(({ mean }) => mean));
    const rivals = row.filter(({ other }) => candidates.includes(other));
    const low = Math.min(0, ...rivals.map(({ mean, width }) => mean - width));
    return oriented(gap, low, most[variant]!, sign);
  });
}

/** Positive zero throughout: "-0" would show in a table. */
function oriented(gap: number, low: number, most: number, sign: number): AgainstBest {
  const high = Math.max(0, most);
  const ends = sign > 0 ? { low, high } : { low: -high + 0, high: -low + 0 };
  return { gap: sign * gap + 0, ...ends, mayBeBest: most >= 0 };
}

function wholeRows(values: readonly (readonly (number | null)[])[], sign: number): number[][] {
  const lengths = new Set(values.map(({ length }) => length));
  if (lengths.size > 1) throw new RangeError("compareWithBest: every variant needs as many replications as the others");
  const [n = 0] = lengths;
  const rows = Array.from({ length: n }, (_, replication) => values.map((list) => list[replication]!));
  return rows
    .filter((row): row is number[] => row.every((value) => value !== null))
    .map((row) => row.map((value) => sign * value));
}

interface Pair {
  other: number;
  mean: number;
  width: number;
}

function pairwise(rows: readonly number[][], k: number, t: number): Pair[][] {
  const variants = Array.from({ length: k }, (_, variant) => variant);
  return variants.map((one) =>
    variants
      .filter((other) => other !== one)
      .map((other) => {
        const moments = new RunningMoments();
        for (const row of rows) moments.add(row[one]! - row[other]!);
        return { other, mean: moments.mean!, width: (t * moments.sd!) / Math.sqrt(rows.length) };
      }),
  );
}
