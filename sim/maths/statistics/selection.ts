import { kimNelsonConstants } from "./kimNelsonConstants.ts";
import { RunningMoments } from "./runningMoments.ts";

/** What is asked of a selection. Observations are days, or pair means of antithetic days. */
export interface SelectionQuestion {
  /** Number of variants, 2 or more. */
  k: number;
  /** Observations of every variant before the first one is dropped, 2 or more; 10 to 20 are usual. */
  n0: number;
  /** Indifference zone: smallest difference worth finding, above 0, in the response's own unit. */
  delta: number;
  /** Probability of picking wrongly, below 1. */
  alpha: number;
  better: "more" | "less";
  /** Observations of a variant at which the selection stops undecided, `n0` or more. */
  atMost: number;
}

export interface Dropped {
  variant: number;
  /** Number of observations of it at that moment. */
  after: number;
}

/** Where a selection stands: plain data, never changed in place. */
export interface SelectionState {
  readonly question: SelectionQuestion;
  readonly hSquared: number;
  /** Observations taken in, of every variant still running. */
  readonly n: number;
  /** Observations of the first stage, `[observation][variant]`; emptied once the variances are known. */
  readonly firstStage: readonly (readonly number[])[];
  /** Mean of each variant, over its own observations. */
  readonly means: readonly number[];
  /** Variance of the difference of each two variants, from the first stage; null during it. */
  readonly variances: readonly (readonly number[])[] | null;
  /** Ascending. */
  readonly survivors: readonly number[];
  readonly dropped: readonly Dropped[];
  /** A variant without a value, which makes the selection impossible. */
  readonly missing: { variant: number; observation: number } | null;
}

export type Verdict =
  | { kind: "undecided" }
  | { kind: "selected"; variant: number; n: number }
  /** Two or more were left at `atMost`: the leader is picked without the promised probability. */
  | { kind: "ceiling"; leader: number; n: number }
  | { kind: "no value"; variant: number; observation: number };

/** What to run next: observations `from` (counted from 0) on, `count` of them, of these variants. */
export interface SelectionBatch {
  variants: number[];
  from: number;
  count: number;
}

/**
 * Begins the choice of the best variant by the fully sequential procedure of Kim and Nelson (2001, ACM TOMACS 11(3)
 * 251-273; the form from memory): run all, drop a variant as soon as it lies so far behind another that it is hardly the
 * best, go on with the rest. With probability 1 - alpha or more the variant selected is the best one whenever the best
 * mean is better than every other by `delta` or more; of means that lie nearer to the best any may be picked, and the
 * paper promises nothing about which. Holds under common random numbers, which make it faster. Assumes values that are
 * close to normal and independent from observation to observation.
 *
 * Loop: `nextBatch`, run it, `observe`, until `verdict` is no longer "undecided".
 */
export function startSelection(question: SelectionQuestion): SelectionState {
  const { k, n0, delta, alpha, atMost } = question;
  const { hSquared } = kimNelsonConstants(k, n0, alpha);
  if (!(delta > 0)) throw new RangeError(`startSelection: delta is ${delta}; it must be above 0`);
  if (!(atMost >= n0)) throw new RangeError(`startSelection: atMost is ${atMost}; it must be ${n0} or more`);
  const each = Array.from({ length: k }, (_, variant) => variant);
  return {
    ...{ question, hSquared, n: 0, firstStage: [], means: each.map(() => 0), variances: null },
    ...{ survivors: each, dropped: [], missing: null },
  };
}

/**
 * What to run next: the rest of the first stage, then up to `size` observations (1 or more) of the variants left, and
 * never more than can still be needed. Null when the verdict stands. The size changes how much is run, not the verdict.
 */
export function nextBatch(state: SelectionState, size: number): SelectionBatch | null {
  if (!(size >= 1)) throw new RangeError(`nextBatch: a size of ${size}; it must be 1 or more`);
  if (verdict(state).kind !== "undecided") return null;
  const { n, question, survivors } = state;
  const count = n < question.n0 ? question.n0 - n : Math.min(size, mostNeeded(state) - n);
  return { variants: [...survivors], from: n, count };
}

/**
 * Takes in observations `state.n` and following: one row each, one value per variant (those of dropped variants are not
 * looked at). Rows are taken one by one and those after the verdict are left out, so the size of the batches cannot
 * show in it.
 */
export function observe(
  state: SelectionState,
  rows: readonly (readonly (number | null | undefined)[])[],
): SelectionState {
  let now = state;
  for (const row of rows) {
    if (verdict(now).kind !== "undecided") return now;
    if (row.length !== now.question.k)
      throw new RangeError(`observe: ${row.length} values of ${now.question.k} variants`);
    now = observeRow(now, row);
  }
  return now;
}

export function verdict({ question, n, survivors, means, missing }: SelectionState): Verdict {
  if (missing !== null) return { kind: "no value", ...missing };
  if (survivors.length === 1) return { kind: "selected", variant: survivors[0]!, n };
  return n < question.atMost
    ? { kind: "undecided" }
    : { kind: "ceiling", leader: leaderOf(survivors, means, question), n };
}

function observeRow(state: SelectionState, row: readonly (number | null | undefined)[]): SelectionState {
  const without = state.survivors.find((variant) => !Number.isFinite(row[variant] ?? Number.NaN));
  if (without !== undefined) return { ...state, missing: { variant: without, observation: state.n } };
  const n = state.n + 1;
  const means = state.means.map((mean, variant) =>
    state.survivors.includes(variant) ? mean + (row[variant]! - mean) / n : mean,
  );
  const next = { ...state, n, means };
  if (n < state.question.n0) return { ...next, firstStage: [...state.firstStage, row as number[]] };
  const variances = state.variances ?? differenceVariances([...state.firstStage, row as number[]]);
  return screened({ ...next, firstStage: [], variances });
}

/** Drops every variant that lies behind another by more than their distance allows at this n. */
function screened(state: SelectionState): SelectionState {
  const { survivors, means, n, question } = state;
  const sign = signOf(question);
  const isBehind = (one: number, other: number): boolean =>
    sign * means[one]! < sign * means[other]! - margin(state, one, other);
  const left = survivors.filter((one) => !survivors.some((other) => other !== one && isBehind(one, other)));
  // No margin is left anywhere: the procedure ends with the best mean, the first of equal ones.
  const ended = left.every((one) => left.every((other) => other === one || margin(state, one, other) === 0));
  const kept = ended ? [leaderOf(left, means, question)] : left;
  const gone = survivors.filter((variant) => !kept.includes(variant)).map((variant) => ({ variant, after: n }));
  return { ...state, survivors: kept, dropped: [...state.dropped, ...gone] };
}

/** W of the paper: the sides of a triangle that closes with n. */
function margin({ question, hSquared, variances, n }: SelectionState, one: number, other: number): number {
  const { delta } = question;
  return Math.max(0, (delta / (2 * n)) * ((hSquared * variances![one]![other]!) / delta ** 2 - n));
}

/** Observations after which no margin is left between any two of the survivors. */
function mostNeeded({ question, hSquared, variances, survivors }: SelectionState): number {
  const ends = survivors.flatMap((one) =>
    survivors.map((other) => Math.ceil((hSquared * variances![one]![other]!) / question.delta ** 2)),
  );
  return Math.min(question.atMost, Math.max(...ends));
}

function leaderOf(variants: readonly number[], means: readonly number[], question: SelectionQuestion): number {
  const sign = signOf(question);
  return variants.reduce((best, variant) => (sign * means[variant]! > sign * means[best]! ? variant : best));
}

/** The paper looks for the greatest mean; where less is better it looks at the negatives. */
function signOf({ better }: SelectionQuestion): number {
  return better === "more" ? 1 : -1;
}

function differenceVariances(rows: readonly (readonly number[])[]): number[][] {
  const variants = rows[0]!.map((_, variant) => variant);
  return variants.map((one) =>
    variants.map((other) => {
      const moments = new RunningMoments();
      for (const row of rows) moments.add(row[one]! - row[other]!);
      return moments.sd! ** 2;
    }),
  );
}
