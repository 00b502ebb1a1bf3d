import { jStat } from "../numeric/index.ts";
import { compensatedSum } from "./compensatedSum.ts";

/** Variance between groups and within them, from a nested (one-way, random) layout. */
export interface VarianceComponents {
  groups: number;
  values: number;
  mean: number;
  /** Mean squares. */
  msBetween: number;
  msWithin: number;
  /** Days of a group as far as the split goes: their number where all have as many (n0). */
  perGroup: number;
  /** Variance of the groups' true means: unbiased before it is cut at 0, so it may come out 0. */
  between: number;
  within: number;
  /** Part of `between` in the sum of both, with its interval; null where nothing varies. */
  share: { value: number; low: number; high: number } | null;
}

/**
 * Splits what values vary by into what groups differ by and what they differ by inside a group: analysis of variance with
 * random groups, between = (MSB - MSW) / n0 with n0 = (N - sum n_i^2 / N) / (k - 1) (Searle, Casella and McCulloch 1992,
 * Variance Components, chapter 3). Two-sided interval of the share by F: exact for normal values in equal groups, with n0
 * in place of n near it for others.
 *
 * Two groups or more, and one of them with two values or more; else a RangeError.
 *
 * @example varianceComponents([[1, 3], [5, 7]], 0.95).between // 7: MSB 16, MSW 2
 */
export function varianceComponents(groups: readonly (readonly number[])[], confidence: number): VarianceComponents {
  const sizes = groups.map(({ length }) => length);
  const values = compensatedSum(sizes);
  const [dfBetween, dfWithin] = [groups.length - 1, values - groups.length];
  if (dfBetween < 1 || dfWithin < 1 || sizes.includes(0))
    throw new RangeError(`varianceComponents: ${values} values in ${groups.length} groups; too few to split`);
  const means = groups.map(meanOf);
  const mean = meanOf(groups.flat());
  const msBetween = compensatedSum(means.map((each, group) => sizes[group]! * (each - mean) ** 2)) / dfBetween;
  const squares = groups.flatMap((group, index) => group.map((value) => (value - means[index]!) ** 2));
  const msWithin = compensatedSum(squares) / dfWithin;
  const perGroup = (values - compensatedSum(sizes.map((size) => size * size)) / values) / dfBetween;
  const between = Math.max(0, (msBetween - msWithin) / perGroup);
  const found = { msBetween, msWithin, perGroup, between, dfs: [dfBetween, dfWithin] as const };
  const about = { groups: groups.length, values, mean, msBetween, msWithin, perGroup, between, within: msWithin };
  return { ...about, share: shareOf(found, confidence) };
}

interface Split {
  msBetween: number;
  msWithin: number;
  perGroup: number;
  between: number;
  dfs: readonly [between: number, within: number];
}

function shareOf({ msBetween, msWithin, perGroup, between, dfs }: Split, confidence: number) {
  if (between + msWithin === 0) return null;
  if (msWithin === 0) return { value: 1, low: 1, high: 1 };
  const end = (p: number): number => {
    const ratio = (msBetween / msWithin / fQuantile(p, dfs) - 1) / perGroup;
    return ratio <= 0 ? 0 : ratio / (1 + ratio);
  };
  const value = between / (between + msWithin);
  return { value, low: end((1 + confidence) / 2), high: end((1 - confidence) / 2) };
}

/** By the beta distribution: d1 F / (d1 F + d2) is one. */
function fQuantile(p: number, [d1, d2]: readonly [number, number]): number {
  const share = jStat.beta.inv(p, d1 / 2, d2 / 2);
  return (d2 * share) / (d1 * (1 - share));
}

function meanOf(values: readonly number[]): number {
  return compensatedSum(values) / values.length;
}
