import { compensatedSum } from "./compensatedSum.ts";

/** A regression on controls, read off where every control has its known mean. */
export interface ControlFit {
  intercept: number;
  /** Null for a column that does not vary or follows from those before it. */
  coefficients: (number | null)[];
  residualSquares: number;
  /** What the distance of the controls from their known means adds to 1/n in the variance of the intercept. */
  leverage: number;
}

/** A column whose part that is new is this small (of its length) says nothing new: rounding would. */
const NOTHING_NEW = 1e-9;

/**
 * Least squares of `y` on `offsets[control][observation]` (control minus its known mean) with a constant. Columns are made
 * orthogonal one after the other (modified Gram-Schmidt), which needs no inverse and stays accurate when controls are
 * alike. At least as many observations as controls plus two.
 */
export function fitControls(y: readonly number[], offsets: readonly (readonly number[])[]): ControlFit {
  const yMean = meanOf(y);
  let residual = y.map((value) => value - yMean);
  let intercept = yMean;
  let leverage = 0;
  const basis: { control: number; column: number[]; missed: number; square: number; slope: number; along: number[] }[] =
    [];
  for (const [control, offset] of offsets.entries()) {
    let missed = meanOf(offset);
    let column = offset.map((value) => value - missed);
    const length = dot(column, column);
    const along: number[] = [];
    for (const before of basis) {
      const share = dot(column, before.column) / before.square;
      along.push(share);
      column = column.map((value, index) => value - share * before.column[index]!);
      missed -= share * before.missed;
    }
    const square = dot(column, column);
    if (!(square > NOTHING_NEW ** 2 * length)) continue;
    const slope = dot(residual, column) / square;
    residual = residual.map((value, index) => value - slope * column[index]!);
    intercept -= slope * missed;
    leverage += missed ** 2 / square;
    basis.push({ control, column, missed, square, slope, along });
  }
  const coefficients: (number | null)[] = offsets.map(() => null);
  for (const [place, { control, slope }] of [...basis.entries()].reverse()) {
    const later = basis.slice(place + 1).map((after) => after.along[place]! * coefficients[after.control]!);
    coefficients[control] = slope - compensatedSum(later);
  }
  return { intercept, coefficients, residualSquares: dot(residual, residual), leverage };
}

function meanOf(values: readonly number[]): number {
  return compensatedSum(values) / values.length;
}

function dot(one: readonly number[], other: readonly number[]): number {
  return compensatedSum(one.map((value, index) => value * other[index]!));
}
