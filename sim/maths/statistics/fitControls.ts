import { compensatedSum } from "./compensatedSum.ts";

/** A regression on controls, read off where every control has its known mean. */
export interface ControlFit {
  intercept: number;
  /** Null for a control that does not vary or follows from those before it. */
  coefficients: (number | null)[];
  residualSquares: number;
  /** What the distance of the controls from their known means adds to 1/n in the variance of the intercept. */
  leverage: number;
}

/** A control after what it shares with those before it is taken out. */
interface Fresh {
  control: number;
  column: number[];
  /** What its mean missed. */
  missed: number;
  square: number;
  /** How much of each earlier one was in it. */
  shares: number[];
}

/** A control whose fresh part is this small, as a share of its own length, says nothing new: rounding would speak. */
const NOTHING_NEW = 1e-9;

/**
 * Least squares of `y` on `offsets[control][observation]` (control minus its known mean) with a constant. Controls are
 * made orthogonal one after the other (modified Gram-Schmidt), which needs no inverse and stays accurate when they are
 * alike. At least as many observations as controls plus two.
 */
export function fitControls(y: readonly number[], offsets: readonly (readonly number[])[]): ControlFit {
  const basis = freshParts(offsets);
  const slopes: number[] = [];
  let { values: residual, mean: intercept } = centred(y);
  for (const { column, missed, square } of basis) {
    const slope = dot(residual, column) / square;
    residual = residual.map((value, index) => value - slope * column[index]!);
    intercept -= slope * missed;
    slopes.push(slope);
  }
  return {
    intercept,
    coefficients: coefficientsOf(basis, slopes, offsets.length),
    residualSquares: dot(residual, residual),
    leverage: compensatedSum(basis.map(({ missed, square }) => missed ** 2 / square)),
  };
}

function freshParts(offsets: readonly (readonly number[])[]): Fresh[] {
  const basis: Fresh[] = [];
  for (const [control, offset] of offsets.entries()) {
    const { values, mean } = centred(offset);
    const fresh = { control, column: values, missed: mean, square: 0, shares: [] as number[] };
    for (const before of basis) {
      const share = dot(fresh.column, before.column) / before.square;
      fresh.column = fresh.column.map((value, index) => value - share * before.column[index]!);
      fresh.missed -= share * before.missed;
      fresh.shares.push(share);
    }
    fresh.square = dot(fresh.column, fresh.column);
    if (fresh.square > NOTHING_NEW ** 2 * dot(values, values)) basis.push(fresh);
  }
  return basis;
}

/** Slopes along the fresh parts, turned back into one coefficient for each control, from the last to the first. */
function coefficientsOf(basis: readonly Fresh[], slopes: readonly number[], controls: number): (number | null)[] {
  const coefficients: (number | null)[] = new Array(controls).fill(null);
  for (let place = basis.length - 1; place >= 0; place--) {
    const later = basis.slice(place + 1).map(({ control, shares }) => shares[place]! * coefficients[control]!);
    coefficients[basis[place]!.control] = slopes[place]! - compensatedSum(later);
  }
  return coefficients;
}

function centred(values: readonly number[]): { values: number[]; mean: number } {
  const mean = compensatedSum(values) / values.length;
  return { values: values.map((value) => value - mean), mean };
}

function dot(one: readonly number[], other: readonly number[]): number {
  return compensatedSum(one.map((value, index) => value * other[index]!));
}
