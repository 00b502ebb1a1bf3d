import { jStat } from "../numeric/index.ts";
import { studentQuantile } from "./studentQuantile.ts";

/** Midpoints of the sum over the spread that a study happens to see. */
const POINTS = 800;
/** Standard deviations of that spread on either side of 1; beyond lies less than 1e-12. */
const REACH = 8;
/** Of the bracket: leaves less than 1e-6 of it. */
const HALVINGS = 21;

/**
 * How many standard errors a true difference must measure for Student's two-sided test to find it with probability
 * `power`: the noncentrality at which noncentral t leaves the middle `confidence` of Student's t (Fisher 1925; Cohen 1988,
 * section 2.4). With known spread it is the sum of two normal quantiles, 1.960 + 0.842 at 95 % and four of five.
 *
 * `df` >= 1; `confidence` and `power` in (0, 1), `power` above 1 - confidence (else a RangeError). Relative error under
 * 1e-4 (measured against SciPy's noncentral t, tested).
 *
 * @example noticeableShift(126, 0.95, 0.8) // 2.824
 */
export function noticeableShift(df: number, confidence: number, power: number): number {
  if (!(df >= 1)) throw new RangeError(`noticeableShift: df is ${df}; it must be 1 or more`);
  if (!(power > 1 - confidence && power < 1)) {
    throw new RangeError(`noticeableShift: power is ${power}; it must lie between ${1 - confidence} and 1`);
  }
  const key = `${df} ${confidence} ${power}`;
  let shift = KNOWN.get(key);
  if (shift === undefined) {
    shift = solve(df, confidence, power);
    KNOWN.set(key, shift);
  }
  return shift;
}

/** Hundreds of comparisons of one calibration ask for the same few. */
const KNOWN = new Map<string, number>();

function solve(df: number, confidence: number, power: number): number {
  const found = powerOf(df, studentQuantile((1 + confidence) / 2, df));
  let [low, high] = [0, 1];
  while (found(high) < power) [low, high] = [high, 2 * high];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (found(middle) < power) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Probability that a t value lies beyond `limit` on either side, by its noncentrality: averaged over s, the seen spread as a
 * multiple of the true one, whose square times df has the chi-squared law.
 */
function powerOf(df: number, limit: number): (shift: number) => number {
  const from = Math.max(0, 1 - REACH / Math.sqrt(2 * df));
  const width = (1 + REACH / Math.sqrt(2 * df) - from) / POINTS;
  const constant = Math.log(2) + (df / 2) * Math.log(df / 2) - jStat.gammaln(df / 2);
  const spreads = Array.from({ length: POINTS }, (_, i) => from + (i + 0.5) * width);
  const weights = spreads.map((s) => width * Math.exp(constant + (df - 1) * Math.log(s) - (df * s * s) / 2));
  const below = (z: number) => jStat.normal.cdf(z, 0, 1);
  return (shift) =>
    spreads.reduce((sum, s, i) => sum + weights[i]! * (below(shift - limit * s) + below(-limit * s - shift)), 0);
}
