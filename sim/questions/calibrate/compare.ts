import {
  estimate,
  noticeableShift,
  quantile,
  studentQuantile,
  studentTwoSidedP,
} from "../../maths/statistics/index.ts";

/** One quantity, observed and simulated. */
export interface ComparedDays {
  observed: Side;
  simulated: Side;
  /** Observed minus simulated, with an interval that holds for all quantities at once. */
  difference: number;
  low: number;
  high: number;
  /** By itself, two-sided. */
  p: number;
  /** Of the difference. */
  standardError: number;
  /** The interval leaves 0 out. */
  shown: boolean;
  /**
   * A true difference of this size, either way, would be found with probability `POWER`, were the days to spread as these
   * did. 0 where nothing varies: any difference would be found.
   */
  noticeable: number;
}

/** Four of five cases: the usual aim of a study (Cohen 1988, section 2.4). */
export const POWER = 0.8;

/** Mean of some days with its interval (null with one day) and the spread of the days. */
export interface Side {
  days: number;
  mean: number;
  low: number | null;
  high: number | null;
  min: number;
  max: number;
  /** Between them lie the middle 95 % of the days. */
  p025: number;
  p975: number;
}

/**
 * Observed against simulated days by Student's test of two means ("Student" 1908; Fisher 1925), their spread taken as the
 * same, as it is when the plan is right: so the error probability is kept with few observed days too, where Welch's
 * approximation is not (it finds 16 differences in 100 in place of 5 with three days and eight quantities). One observed
 * day gives the prediction interval of one more day. `family` quantities are compared, and each interval has confidence
 * 1 - (1 - confidence) / family, so that all hold at once with `confidence` whatever they have in common (Bonferroni; Dunn
 * 1961). Null where the observed days have no value, or the simulated ones fewer than two.
 */
export function compare(
  observed: readonly (number | null)[],
  simulated: readonly (number | null)[],
  family: number,
  confidence: number,
): ComparedDays | null {
  const each = confidenceOfEach(family, confidence);
  const [seen, drawn] = [present(observed), present(simulated)];
  if (seen.length === 0 || drawn.length < 2) return null;
  const found = pooled(seen, drawn, each);
  return {
    observed: sideOf(seen, confidence),
    simulated: sideOf(drawn, confidence),
    ...found,
    shown: found.low > 0 || found.high < 0,
  };
}

/** Confidence of one interval when all of a family are to hold at once. */
export function confidenceOfEach(family: number, confidence: number): number {
  return 1 - (1 - confidence) / family;
}

function present(values: readonly (number | null)[]): number[] {
  return values.filter((value) => value !== null);
}

type Found = Omit<ComparedDays, "observed" | "simulated" | "shown">;

function pooled(seen: readonly number[], drawn: readonly number[], confidence: number): Found {
  const [one, two] = [estimate(seen, confidence)!, estimate(drawn, confidence)!];
  const df = one.n + two.n - 2;
  const square = ((one.n - 1) * one.sd ** 2 + (two.n - 1) * two.sd ** 2) / df;
  const standardError = Math.sqrt(square * (1 / one.n + 1 / two.n));
  const difference = one.mean - two.mean;
  const halfWidth = studentQuantile((1 + confidence) / 2, df) * standardError;
  const t = difference === 0 ? 0 : difference / standardError;
  const [low, high] = [difference - halfWidth, difference + halfWidth];
  const noticeable = standardError * noticeableShift(df, confidence, POWER);
  return { difference, low, high, p: studentTwoSidedP(t, df), standardError, noticeable };
}

function sideOf(values: readonly number[], confidence: number): Side {
  const { n, mean, low, high, min, max } = estimate(values, confidence)!;
  const sorted = [...values].sort((a, b) => a - b);
  return { days: n, mean, low, high, min, max, p025: quantile(sorted, 0.025)!, p975: quantile(sorted, 0.975)! };
}
