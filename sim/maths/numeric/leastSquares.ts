/** Least squares of one column on others. */
export interface LeastSquares {
  /** One for each column; null for one that follows from those before it. */
  coefficients: (number | null)[];
  residuals: number[];
  residualSquares: number;
  /** Columns that say something new. */
  rank: number;
  /** Of each coefficient, its variance as a multiple of the error's: the diagonal of the inverse of X'X; null with it. */
  spread: (number | null)[];
  /** How far each row pulls its own fitted value; together the rank. */
  leverages: number[];
}

/** A column whose part that is new is this small, as a share of its own length, says nothing new: rounding would speak. */
const NOTHING_NEW = 1e-9;

interface Fresh {
  column: number;
  direction: number[];
  /** How much of each earlier direction was in the column, its own length last. */
  shares: number[];
}

/**
 * Least squares of `y` on `columns`, a constant included only where it is one of them. By directions at right angles to each
 * other (modified Gram-Schmidt, each column gone over twice), which needs no inverse and stays accurate when columns are
 * alike: relative error about 1e-12 where they are not. Cost: rows x columns^2.
 *
 * `columns` of the length of `y`, finite. Neither is changed.
 *
 * @example leastSquares([[1, 1, 1], [0, 1, 2]], [1, 3, 5]).coefficients // [1, 2]
 */
export function leastSquares(columns: readonly (readonly number[])[], y: readonly number[]): LeastSquares {
  return leastSquaresOn(columns)(y);
}

/** The same for many a `y`: what is the same for all of them is reckoned once. */
export function leastSquaresOn(columns: readonly (readonly number[])[]): (y: readonly number[]) => LeastSquares {
  const basis = directions(columns);
  const inverse = inverseOf(basis);
  const ofColumn = (values: (place: number) => number) =>
    columns.map((_, column) => {
      const place = basis.findIndex((fresh) => fresh.column === column);
      return place === -1 ? null : values(place);
    });
  const spread = ofColumn((place) => dot(inverse[place]!, inverse[place]!));
  const rows = columns[0]?.length ?? 0;
  const leverages = Array.from({ length: rows }, (_, row) =>
    basis.reduce((sum, { direction }) => sum + direction[row]! ** 2, 0),
  );
  return (y) => {
    let residuals = [...y];
    const along = basis.map(({ direction }) => {
      const length = dot(residuals, direction);
      residuals = without(residuals, direction, length);
      return length;
    });
    return {
      coefficients: ofColumn((place) => dot(inverse[place]!, along)),
      residuals,
      residualSquares: dot(residuals, residuals),
      rank: basis.length,
      spread,
      leverages: columns.length === 0 ? y.map(() => 0) : leverages,
    };
  };
}

/** The columns made to stand at right angles, each of length 1; those that say nothing new are left out. */
export function atRightAngles(columns: readonly (readonly number[])[]): number[][] {
  return directions(columns).map(({ direction }) => direction);
}

function directions(columns: readonly (readonly number[])[]): Fresh[] {
  const basis: Fresh[] = [];
  for (const [column, written] of columns.entries()) {
    let rest = [...written];
    const shares = basis.map(() => 0);
    for (let round = 0; round < 2; round++) {
      basis.forEach(({ direction }, place) => {
        const share = dot(rest, direction);
        shares[place]! += share;
        rest = without(rest, direction, share);
      });
    }
    const length = Math.sqrt(dot(rest, rest));
    if (!(length > NOTHING_NEW * Math.sqrt(dot(written, written)))) continue;
    basis.push({ column, direction: rest.map((value) => value / length), shares: [...shares, length] });
  }
  return basis;
}

/** Inverse of the triangle that turns directions into columns, row by row. */
function inverseOf(basis: readonly Fresh[]): number[][] {
  const size = basis.length;
  const inverse = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (let column = 0; column < size; column++) {
    inverse[column]![column] = 1 / basis[column]!.shares[column]!;
    for (let row = column - 1; row >= 0; row--) {
      let sum = 0;
      for (let place = row + 1; place <= column; place++) sum += basis[place]!.shares[row]! * inverse[place]![column]!;
      inverse[row]![column] = -sum / basis[row]!.shares[row]!;
    }
  }
  return inverse;
}

function without(values: readonly number[], direction: readonly number[], share: number): number[] {
  return values.map((value, row) => value - share * direction[row]!);
}

function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, value, row) => sum + value * other[row]!, 0);
}
