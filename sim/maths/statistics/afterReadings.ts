import { leastSquares } from "../numeric/index.ts";
import { compensatedSum } from "./compensatedSum.ts";
import { normalQuantile } from "./normalQuantile.ts";

/** Polynomials of the normal score: no more than so many, and one for so many worlds. */
const MAX_DEGREE = 6;
const WORLDS_PER_DEGREE = 6;

/**
 * What one will expect of a quantity, world by world, once more readings of the figure that it hangs on have been taken: the
 * preposterior mean, of which the value of sample information is reckoned (Raiffa and Schlaifer 1961) as that of
 * knowing the figure is of the quantity itself. `values[world]`: what the figure adds in each world (`mainEffects`);
 * `figure[world]`: what it is there. `known`: readings that tell as much as is known now; `more`: readings yet to take.
 *
 * The figure is taken as normal on the scale of its ranks, with more / (known + more) of its variance told by the readings
 * (normal approximation: Jalal and Alarid-Escudero 2018, Medical Decision Making 38; from memory). A curve over a
 * normal figure keeps the part r^j of its Hermite polynomial of degree j, r^2 being that share (Mehler 1866), which is
 * exact for a normal figure and normal readings. Mean 0. With `more` infinite the curve itself, as far as polynomials go.
 *
 * @example afterReadings([-1, 1], [3, 4], 10, 30) // [-0.866, 0.866]: the root of three quarters
 */
export function afterReadings(
  values: readonly number[],
  figure: readonly number[],
  known: number,
  more: number,
): number[] {
  const root = more === Number.POSITIVE_INFINITY ? 1 : Math.sqrt(more / (known + more));
  const scores = normalScores(figure);
  const degree = Math.max(1, Math.min(MAX_DEGREE, Math.floor(values.length / WORLDS_PER_DEGREE)));
  const terms = hermite(scores, degree);
  const { coefficients } = leastSquares(terms, values);
  let kept = 1;
  const weights = coefficients.map((coefficient, power) => {
    if (power > 0) kept *= root;
    return (coefficient ?? 0) * kept;
  });
  const expected = values.map((_, world) => compensatedSum(terms.map((term, power) => weights[power]! * term[world]!)));
  const mean = compensatedSum(expected) / expected.length;
  return expected.map((value) => value - mean);
}

/** Of each value the normal quantile of its place among all; equal values have the same. */
function normalScores(figure: readonly number[]): number[] {
  const sorted = figure.toSorted((a, b) => a - b);
  const places = new Map<number, { first: number; last: number }>();
  for (const [place, value] of sorted.entries())
    places.set(value, { first: places.get(value)?.first ?? place, last: place });
  return figure.map((value) => {
    const { first, last } = places.get(value)!;
    return normalQuantile(((first + last) / 2 + 0.5) / figure.length);
  });
}

/** Those of degree 0 to the one given: He(j + 1) = z He(j) - j He(j - 1). */
function hermite(scores: readonly number[], degree: number): number[][] {
  const terms = [scores.map(() => 1), [...scores]];
  while (terms.length <= degree) {
    const power = terms.length - 1;
    const [before, last] = [terms.at(-2)!, terms.at(-1)!];
    terms.push(scores.map((score, world) => score * last[world]! - power * before[world]!));
  }
  return terms;
}
