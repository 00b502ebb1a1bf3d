import { leastSquares, leastSquaresOn } from "../numeric/index.ts";
import { uniformStream } from "../random/index.ts";
import { compensatedSum } from "./compensatedSum.ts";
import { normalQuantile } from "./normalQuantile.ts";

/** What was simulated with figures as they may be, and what was observed. */
export interface PosteriorQuestion {
  /** `scores[figure][world]`: of each figure the normal quantile of its place among all that it may be. */
  scores: readonly (readonly number[])[];
  /** `values[quantity][world][day]`, as many days in every world and two or more. */
  values: readonly (readonly (readonly number[])[])[];
  /** Of each quantity the mean of the days that were observed, and their number. */
  observed: readonly { mean: number; days: number }[];
  draws: number;
  seed: string;
}

/**
 * What figures may still be once days were observed: `[draw][figure]` normal scores, each draw as likely. Normal before (mean
 * 0, variance 1), each quantity a straight line in the scores (least squares over the worlds), observed means off by the luck of
 * their days and by what the lines miss: then the posterior is normal, too (Bayes linear: Goldstein and Wooff 2007; from
 * memory), and exact where those three hold. Draws by least squares on perturbed data, in mirrored pairs so that their mean is
 * the posterior's (Papandreou and Yuille 2010, from memory). Luck's covariances between quantities count, as hours of one day hang
 * together. Quantities that never vary tell nothing.
 */
export function posteriorDraws({ scores, values, observed, draws, seed }: PosteriorQuestion): number[][] {
  const told = values.flatMap((worlds, quantity) => (isAlive(worlds) ? [quantity] : []));
  const worlds = scores[0]!.length;
  const terms = [scores[0]!.map(() => 1), ...scores];
  const fits = told.map((quantity) => leastSquares(terms, values[quantity]!.map(meanOf)));
  const days = values[0]![0]!.length;
  const luck = told.map((one) => told.map((other) => covariance(values[one]!, values[other]!)));
  const error = luck.map((row, one) =>
    row.map((value, other) => {
      const seen = Math.sqrt(observed[told[one]!]!.days * observed[told[other]!]!.days);
      // Lines are known by so many worlds only, and miss what bends.
      const lines = (value / days) * (terms.length / worlds);
      const { residualSquares, rank } = fits[one]!;
      const missed = one === other ? Math.max(0, residualSquares / Math.max(1, worlds - rank) - value / days) : 0;
      return value / seen + lines + missed;
    }),
  );
  const root = cholesky(error);
  const solved = (column: readonly number[]) => forward(root, column);
  const columns = scores.map((_, figure) => [
    ...solved(fits.map(({ coefficients }) => coefficients[figure + 1] ?? 0)),
    ...scores.map((_, other) => (other === figure ? 1 : 0)),
  ]);
  const gap = solved(fits.map(({ coefficients }, place) => observed[told[place]!]!.mean - (coefficients[0] ?? 0)));
  const data = [...gap, ...scores.map(() => 0)];
  const solve = leastSquaresOn(columns);
  const uniforms = uniformStream(seed, 0, "posterior", "draws");
  return Array.from({ length: Math.ceil(draws / 2) }, () => {
    const chance = data.map(() => normalQuantile(uniforms.next()));
    return [1, -1].map((sign) => {
      const { coefficients } = solve(data.map((value, row) => value + sign * chance[row]!));
      return coefficients.map((value) => value ?? 0);
    });
  })
    .flat()
    .slice(0, draws);
}

function isAlive(worlds: readonly (readonly number[])[]): boolean {
  const all = worlds.flat();
  return all.some((value) => value !== all[0]);
}

function meanOf(values: readonly number[]): number {
  return compensatedSum(values) / values.length;
}

/** Of two quantities on the same days, within worlds. */
function covariance(one: readonly (readonly number[])[], other: readonly (readonly number[])[]): number {
  const products = one.flatMap((days, world) => {
    const [mean, beside] = [meanOf(days), meanOf(other[world]!)];
    return days.map((value, day) => (value - mean) * (other[world]![day]! - beside));
  });
  return compensatedSum(products) / (products.length - one.length);
}

/** So small a share of a variance is added to it, so that quantities that say the same do no harm. */
const RIDGE = 1e-9;

/** Lower triangle whose square is the matrix. */
function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const root = matrix.map((row) => row.map(() => 0));
  for (const [row, values] of matrix.entries())
    for (let column = 0; column <= row; column++) {
      let sum = values[column]!;
      for (let at = 0; at < column; at++) sum -= root[row]![at]! * root[column]![at]!;
      if (row !== column) root[row]![column] = sum / root[column]![column]!;
      else root[row]![row] = Math.sqrt(Math.max(sum, RIDGE * Math.max(values[row]!, Number.MIN_VALUE)));
    }
  return root;
}

/** What the triangle must be multiplied by to give the column. */
function forward(root: readonly (readonly number[])[], column: readonly number[]): number[] {
  const found: number[] = [];
  for (const [row, values] of root.entries()) {
    let sum = column[row]!;
    for (let at = 0; at < row; at++) sum -= values[at]! * found[at]!;
    found.push(sum / values[row]!);
  }
  return found;
}
