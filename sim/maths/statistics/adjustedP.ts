/** The p-values of a family of tests, each made to speak for the family. */
export interface AdjustedP {
  /** Keep the chance of even one false difference (family-wise error rate). Holm's is never larger. */
  bonferroni: number[];
  holm: number[];
  /** Keeps the expected share of false differences among those shown (false discovery rate). */
  benjaminiHochberg: number[];
}

/**
 * Adjusted p-values: reject where they are at most the error rate. Bonferroni and Holm (1979, Scandinavian Journal of
 * Statistics 6) hold whatever the tests have in common; Benjamini and Hochberg (1995, Journal of the Royal Statistical
 * Society B 57) for independent or positively dependent tests, as comparisons with one base usually are.
 *
 * Order and length as in `p`, whose values lie from 0 to 1 (else a RangeError). Empty for an empty list.
 */
export function adjustedP(p: readonly number[]): AdjustedP {
  const wrong = p.find((value) => !(value >= 0 && value <= 1));
  if (wrong !== undefined) throw new RangeError(`adjustedP: a p-value is ${wrong}; it must lie from 0 to 1`);
  const m = p.length;
  const ascending = p.map((_, index) => index).sort((a, b) => p[a]! - p[b]!);
  return {
    bonferroni: p.map((value) => Math.min(1, m * value)),
    holm: stepped(p, ascending, (rank) => m - rank, Math.max),
    benjaminiHochberg: stepped(p, ascending.toReversed(), (rank) => m / (m - rank), Math.min),
  };
}

/** Multiplies each p-value by its factor and makes the results run one way along `order`. */
function stepped(
  p: readonly number[],
  order: readonly number[],
  factor: (rank: number) => number,
  keep: (...values: number[]) => number,
): number[] {
  const adjusted: number[] = new Array(p.length);
  let before: number | null = null;
  for (const [rank, index] of order.entries()) {
    const own = Math.min(1, factor(rank) * p[index]!);
    before = before === null ? own : keep(before, own);
    adjusted[index] = before;
  }
  return adjusted;
}
