import { atRightAngles, leastSquares } from "../numeric/index.ts";
import { compensatedSum } from "./compensatedSum.ts";
import { studentQuantile } from "./studentQuantile.ts";

/** What one figure alone does to a response over all that it may be. */
export interface MainEffect {
  /** Variance of the response's mean given the figure: unbiased before it is cut at 0. */
  variance: number;
  /** First-order index: that part of all that figures make the response vary by, with its interval; null where that is 0. */
  share: { value: number; low: number; high: number } | null;
  /** What the figure adds in each world, pulled together until it varies by `variance`. Mean 0. */
  values: number[];
}

export interface MainEffects {
  /** All that figures make the response vary by, alone and together. */
  variance: number;
  figures: MainEffect[];
}

/** So many worlds for each degree of a curve, and no degree beyond the second number. */
const WORLDS_PER_DEGREE = 15;
const MAX_DEGREE = 8;
/** Groups of worlds that are left out by turns. */
const MAX_GROUPS = 40;

/** What a figure was in each world: a column for each of its numbers. */
export type Columns = readonly (readonly number[])[];

/**
 * First-order effects of figures on a response, by regression on the worlds in which it was simulated: of each figure a
 * curve (polynomials of the degree that predicts left-out worlds best, PRESS, Allen 1974), all figures in one fit where there
 * are twice as many worlds as terms, else one by one. What chance adds to a fitted curve's variance is taken off again, so
 * a figure that does nothing comes out at 0 on average. Intervals by the jackknife over groups of worlds (Efron 1981,
 * from memory). With figures drawn independently the share is Sobol's first-order index.
 *
 * `response[world]`: means over the days of each world; `noise`: the variance that these days' luck gives such a mean.
 * `figures[figure][coordinate][world]`: what each figure was; several coordinates where it has several numbers.
 */
export function mainEffects(
  response: readonly number[],
  figures: readonly Columns[],
  noise: number,
  confidence: number,
): MainEffects {
  const degrees = figures.map((columns) => degreeOf(response, columns));
  const all = { response, figures, degrees };
  const variance = Math.max(0, varianceOf(response) - noise);
  const found = effectsOf(all);
  const left = leftOut(all, noise);
  return {
    variance,
    figures: found.map(({ unbiased, raw, values }, figure) => {
      const kept = Math.max(0, unbiased);
      const pull = raw > 0 ? Math.sqrt(kept / raw) : 0;
      const others = left.map(({ effects, variance }) => (variance > 0 ? effects[figure]!.unbiased / variance : null));
      return {
        variance: kept,
        share: variance === 0 ? null : shareWithin(unbiased / variance, others, confidence),
        values: values.map((value) => pull * value),
      };
    }),
  };
}

interface Worlds {
  response: readonly number[];
  figures: readonly Columns[];
  degrees: readonly number[];
}

interface Fitted {
  /** Variance of the fitted curve over the worlds, as it is and without what chance adds to it. */
  raw: number;
  unbiased: number;
  values: number[];
}

function effectsOf({ response, figures, degrees }: Worlds): Fitted[] {
  const bases = figures.map((columns, figure) => curves(columns, degrees[figure]!));
  const terms = bases.reduce((sum, { length }) => sum + length, 0);
  if (2 * (terms + 1) <= response.length) return fitTogether(response, bases);
  return bases.flatMap((basis) => fitTogether(response, [basis]));
}

/** Every basis stands at right angles to the constant and in itself, so squares of coefficients are variances. */
function fitTogether(response: readonly number[], bases: readonly number[][][]): Fitted[] {
  const worlds = response.length;
  const fit = leastSquares([response.map(() => 1), ...bases.flat()], response);
  const error = fit.residualSquares / Math.max(1, worlds - fit.rank);
  return bases.map((basis, figure) => {
    const from = 1 + bases.slice(0, figure).reduce((sum, { length }) => sum + length, 0);
    const to = from + basis.length;
    const coefficients = fit.coefficients.slice(from, to).map((value) => value ?? 0);
    const raw = compensatedSum(coefficients.map((value) => value * value)) / (worlds - 1);
    const chance = (error * compensatedSum(fit.spread.slice(from, to).map((value) => value ?? 0))) / (worlds - 1);
    const values = response.map((_, world) =>
      compensatedSum(basis.map((term, at) => coefficients[at]! * term[world]!)),
    );
    return { raw, unbiased: raw - chance, values };
  });
}

/** Orthonormal polynomials of each coordinate, without the constant. */
export function curves(columns: Columns, degree: number): number[][] {
  const constant = columns[0]!.map(() => 1);
  return atRightAngles([constant, ...columns.flatMap((column) => powersOf(column, degree))]).slice(1);
}

/** Powers of the column moved and scaled to -1 to 1, where they stay apart. */
function powersOf(column: readonly number[], degree: number): number[][] {
  const [low, high] = [Math.min(...column), Math.max(...column)];
  const scaled = column.map((value) => (high > low ? (2 * (value - low)) / (high - low) - 1 : 0));
  const powers: number[][] = [scaled];
  while (powers.length < degree) powers.push(powers.at(-1)!.map((value, world) => value * scaled[world]!));
  return powers;
}

/** The degree whose curve of this figure alone predicts each world best from all others. */
export function degreeOf(response: readonly number[], columns: Columns): number {
  const most = Math.max(1, Math.min(MAX_DEGREE, Math.floor(response.length / WORLDS_PER_DEGREE)));
  const degrees = Array.from({ length: most }, (_, index) => index + 1);
  const errors = degrees.map((degree) => leftOutSquares(response, curves(columns, degree)));
  return degrees[errors.indexOf(Math.min(...errors))] ?? 1;
}

/** Sum of squares by which a constant and these terms miss each world when it is left out (PRESS, Allen 1974). */
export function leftOutSquares(response: readonly number[], terms: readonly (readonly number[])[]): number {
  const { residuals, leverages } = leastSquares([response.map(() => 1), ...terms], response);
  return compensatedSum(residuals.map((value, world) => (value / (1 - leverages[world]!)) ** 2));
}

function leftOut({ response, figures, degrees }: Worlds, noise: number) {
  const groups = Math.min(response.length, MAX_GROUPS);
  return Array.from({ length: groups }, (_, group) => {
    const kept = <Value>(values: readonly Value[]) => values.filter((_, world) => world % groups !== group);
    const others = { response: kept(response), figures: figures.map((columns) => columns.map(kept)), degrees };
    return { effects: effectsOf(others), variance: varianceOf(others.response) - noise };
  });
}

/** From 0 to 1 where leaving worlds out leaves nothing to take a share of. */
function shareWithin(value: number, others: readonly (number | null)[], confidence: number) {
  const within = (share: number) => Math.min(1, Math.max(0, share));
  const groups = others.length;
  if (others.includes(null)) return { value: within(value), low: 0, high: 1 };
  const found = others as readonly number[];
  const mean = compensatedSum(found) / groups;
  const squares = compensatedSum(found.map((other) => (other - mean) ** 2));
  const error = Math.sqrt(((groups - 1) / groups) * squares);
  const half = studentQuantile((1 + confidence) / 2, groups - 1) * error;
  return { value: within(value), low: within(value - half), high: within(value + half) };
}

export function varianceOf(values: readonly number[]): number {
  const mean = compensatedSum(values) / values.length;
  return compensatedSum(values.map((value) => (value - mean) ** 2)) / (values.length - 1);
}
