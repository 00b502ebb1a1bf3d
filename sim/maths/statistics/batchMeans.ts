import { jStat } from "../numeric/index.ts";
import { compensatedSum } from "./compensatedSum.ts";
import { type Estimate, estimate } from "./estimate.ts";
import { groupMeans } from "./groupMeans.ts";

/** A mean from one long run, with a check whether the run was long enough for its interval. */
export interface BatchMeans extends Estimate {
  batches: number;
  batchSize: number;
  /** Values left out at the beginning so that the batches come out even. */
  leftOut: number;
  /** Correlation of neighbouring batch means; null when they do not vary. */
  lag1: number | null;
  /** One-sided p-value of "neighbouring batch means have nothing in common" (von Neumann's ratio); null with `lag1`. */
  independenceP: number | null;
  /** Batch means hang together at 5 %: the interval is too narrow, run longer. */
  runTooShort: boolean;
  words: string;
}

const ALARM = 0.05;

/**
 * Mean of one long run after its warm-up, with the Student-t interval of `batches` batch means (Conway 1963, Management
 * Science 10; 10 to 30 batches: Schmeiser 1982, Operations Research 30). `n` counts batches.
 *
 * Batches must be so long that they are independent. That is tested by von Neumann's ratio of neighbouring differences
 * (von Neumann 1941, Annals of Mathematical Statistics 12; for batch means Fishman 1978, Management Science 24(5)), by
 * its normal approximation, one-sided at 5 %. Not passing means too short; passing does not prove that it was long
 * enough: few batches show little.
 *
 * `values` in order of time, warm-up left out already. `batches` whole, 8 or more, else a RangeError. Null with fewer
 * than two values per batch ("not enough data").
 */
export function batchMeans(values: readonly number[], confidence: number, batches = 20): BatchMeans | null {
  if (!(Number.isInteger(batches) && batches >= 8))
    throw new RangeError(`batchMeans: ${batches} batches; it must be whole, 8 or more`);
  const batchSize = Math.floor(values.length / batches);
  if (batchSize < 2) return null;
  // What does not fit is left out where a rest of the warm-up may hide.
  const leftOut = values.length - batches * batchSize;
  const means = groupMeans(values.slice(leftOut), batchSize);
  const found = estimate(means, confidence)!;
  const check = independence(means, found.mean);
  const runTooShort = check.independenceP !== null && check.independenceP < ALARM;
  return { ...found, batches, batchSize, leftOut, ...check, runTooShort, words: wordsFor(batches, check, runTooShort) };
}

type Check = Pick<BatchMeans, "lag1" | "independenceP">;

/** C = 1 - (sum of squared steps) / (2 sum of squares); without correlation of mean 0 and variance (b - 2)/(b^2 - 1). */
function independence(means: readonly number[], mean: number): Check {
  const b = means.length;
  const squares = compensatedSum(means.map((value) => (value - mean) ** 2));
  if (squares === 0) return { lag1: null, independenceP: null };
  const later = means.slice(1);
  const products = compensatedSum(later.map((value, index) => (value - mean) * (means[index]! - mean)));
  const steps = compensatedSum(later.map((value, index) => (value - means[index]!) ** 2));
  const z = (1 - steps / (2 * squares)) / Math.sqrt((b - 2) / (b * b - 1));
  return { lag1: products / squares, independenceP: 1 - jStat.normal.cdf(z, 0, 1) };
}

function wordsFor(batches: number, { lag1 }: Check, runTooShort: boolean): string {
  if (lag1 === null) return `The ${batches} batch means do not vary.`;
  const correlation = `correlation of neighbours ${lag1.toFixed(2)}`;
  return runTooShort
    ? `The run is too short: its ${batches} batch means hang together (${correlation}), so the interval is too narrow.`
    : `Nothing shows that the ${batches} batch means hang together (${correlation}).`;
}
