import { atRightAngles, type LeastSquares, leastSquares, leastSquaresOn } from "../numeric/index.ts";
import { uniformStream } from "../random/index.ts";
import { compensatedSum } from "./compensatedSum.ts";
import { type Columns, curves, degreeOf, leftOutSquares, varianceOf } from "./mainEffects.ts";
import { studentQuantile } from "./studentQuantile.ts";

/** A share of the variance with its interval; without one where nothing tells it. */
export interface EffectShare {
  value: number;
  low: number | null;
  high: number | null;
}

/** What one figure does, alone and together with others. */
export interface JointFigure {
  /** First-order index: what it does alone. */
  alone: EffectShare;
  /** Total-effect index: what it does alone and together with one other figure. */
  total: EffectShare;
  /** What it adds alone, at each point. Mean 0. */
  values: number[];
}

/** What two figures do together, beyond what each does alone. */
export interface JointPair {
  figures: [number, number];
  share: EffectShare;
  /** What they add together, at each point. */
  values: number[];
}

export interface JointEffects {
  /** All that the figures make the response vary by. */
  variance: number;
  /** Part of the response's variance at left-out points that these effects predict (of a grid: that they hold); 0 to 1. */
  explained: number;
  figures: JointFigure[];
  /** Pairs that predict better than nothing, the greatest share first. */
  pairs: JointPair[];
}

export interface JointQuestion {
  /** At each point the mean over its days. */
  response: readonly number[];
  /** Variance that the luck of these days gives such a mean. */
  noise: number;
  /** `figures[figure][coordinate][point]`. */
  figures: readonly Columns[];
  /** Every combination of levels is there once: effects of levels and of pairs are told apart exactly. */
  grid: boolean;
  /** Of a grid: the response by other days, drawn from the same ones with replacement. */
  otherDays?: readonly (readonly number[])[];
  confidence: number;
}

/** So many points for each term of a pair, and no more powers of either figure than the second number. */
const POINTS_PER_TERM = 15;
const MAX_DEPTH = 4;
/** Pairs are looked for among so many figures, those that do most alone: who does nothing alone seldom does much with another (Wu and Hamada 2009, effect heredity; from memory). */
const MAX_PAIRED = 8;
/** Samples drawn anew: they tell a standard error to 7 %. */
const SAMPLES = 100;

interface Structure {
  degrees: readonly number[];
  pairs: readonly { figures: [number, number]; depth: number }[];
}

/**
 * First-order and total-effect indices (Sobol 1993; Homma and Saltelli 1996) by regression: curves of each figure as in
 * `mainEffects`, and of pairs of figures products of these curves where they predict left-out points better than
 * nothing (PRESS, Allen 1974): a polynomial expansion, whose squares are variances (Sudret 2008, Reliability Engineering
 * and System Safety 93; from memory). What chance adds to a variance is taken off, so that a figure that does nothing comes
 * out at 0 on average. What three figures or more do only together is in no index.
 *
 * Intervals: Student t with the standard deviation of samples drawn anew (bootstrap, Efron 1979; of indices Archer,
 * Saltelli and Sobol 1997, from memory), cut at 0 and 1: what the curves miss with other signs (wild bootstrap, Wu 1986,
 * from memory), then points with replacement. For a Latin hypercube that is too wide rather than too narrow. Of a grid days
 * are drawn, the points stay. What the choice of curves leaves open is not in them.
 *
 * Null where the response does not vary beyond its noise. 3 points, 1 figure or more.
 */
export function jointEffects(question: JointQuestion): JointEffects | null {
  const { response, noise, figures, confidence } = question;
  const variance = varianceOf(response) - noise;
  if (response.length < 3 || !(variance > 0)) return null;
  const structure = structureOf(question);
  const expansion = expand(question, structure);
  const { parts, fit } = partsOf(expansion, response);
  const again = samples(question, fit).map((sample) => sharesIn(sample, question, expansion));
  const shareOf = (...places: number[]): EffectShare => {
    const sum = (of: (place: number) => number) => compensatedSum(places.map(of));
    const value = sum((place) => parts[place]!.variance / variance);
    const others = again.map((shares) => sum((place) => shares[place]!));
    return shareWithin(value, others, confidence);
  };
  const pairs = structure.pairs.map((pair, index) => ({ ...pair, place: figures.length + index }));
  const placesWith = (figure: number) => pairs.filter(({ figures: both }) => both.includes(figure));
  return {
    variance,
    explained: explainedBy(question, fit),
    figures: figures.map((_, figure) => ({
      alone: shareOf(figure),
      total: shareOf(figure, ...placesWith(figure).map(({ place }) => place)),
      values: parts[figure]!.values,
    })),
    pairs: pairs
      .map(({ figures: both, place }) => ({ figures: both, share: shareOf(place), values: parts[place]!.values }))
      .sort((a, b) => b.share.value - a.share.value),
  };
}

function shareWithin(value: number, others: readonly number[], confidence: number): EffectShare {
  const cut = (share: number) => Math.min(1, Math.max(0, share));
  if (others.length < 2) return { value: cut(value), low: null, high: null };
  const half = studentQuantile((1 + confidence) / 2, others.length - 1) * Math.sqrt(varianceOf(others));
  return { value: cut(value), low: cut(value - half), high: cut(value + half) };
}

function structureOf({ response, figures, grid }: JointQuestion): Structure {
  const pairsOf = figures.flatMap((_, one) =>
    figures.slice(one + 1).map((_, next): [number, number] => [one, one + 1 + next]),
  );
  if (grid) {
    const degrees = figures.map((columns) => levelsOf(columns) - 1);
    return { degrees, pairs: pairsOf.map((both) => ({ figures: both, depth: response.length })) };
  }
  const degrees = figures.map((columns) => Math.min(degreeOf(response, columns), Math.max(1, levelsOf(columns) - 1)));
  const mains = figures.flatMap((columns, figure) => curves(columns, degrees[figure]!));
  const { residuals } = leastSquares([response.map(() => 1), ...mains], response);
  const nothing = leftOutSquares(residuals, []);
  const most = Math.min(MAX_DEPTH, Math.max(1, Math.floor(Math.sqrt(response.length / POINTS_PER_TERM))));
  const paired = strongest(response, figures, degrees);
  const found = pairsOf
    .filter((both) => both.every((figure) => paired.has(figure)))
    .map((both) => bestDepth(residuals, figures, degrees, both, most))
    .filter(({ misses }) => misses < nothing)
    .sort((a, b) => a.misses - b.misses);
  let room = Math.floor(response.length / 2) - 1 - mains.length;
  const pairs = found.filter(({ terms }) => {
    if (terms > room) return false;
    room -= terms;
    return true;
  });
  return { degrees, pairs };
}

function strongest(
  response: readonly number[],
  figures: readonly Columns[],
  degrees: readonly number[],
): ReadonlySet<number> {
  const misses = figures.map((columns, figure) => leftOutSquares(response, curves(columns, degrees[figure]!)));
  const order = figures.map((_, figure) => figure).sort((a, b) => misses[a]! - misses[b]!);
  return new Set(order.slice(0, MAX_PAIRED));
}

function bestDepth(
  residuals: readonly number[],
  figures: readonly Columns[],
  degrees: readonly number[],
  both: [number, number],
  most: number,
) {
  const tried = Array.from({ length: most }, (_, index) => {
    const pair = { figures: both, depth: index + 1 };
    const terms = products(figures, degrees, pair);
    return { ...pair, terms: terms.length, misses: leftOutSquares(residuals, terms) };
  });
  return tried.reduce((best, other) => (other.misses < best.misses ? other : best));
}

function levelsOf(columns: Columns): number {
  return Math.max(...columns.map((column) => new Set(column).size));
}

/** Products of the curves of two figures, at right angles to the curves themselves. */
function products(
  figures: readonly Columns[],
  degrees: readonly number[],
  { figures: both, depth }: Structure["pairs"][number],
): number[][] {
  const [left, right] = both.map((figure) => {
    const most = levelsOf(figures[figure]!) - 1;
    return curves(figures[figure]!, Math.max(degrees[figure]!, Math.min(depth, most)));
  }) as [number[][], number[][]];
  const of = (basis: number[][]) => basis.slice(0, depth);
  const terms = of(left).flatMap((a) => of(right).map((b) => a.map((value, point) => value * b[point]!)));
  const before = [(left[0] ?? right[0])!.map(() => 1), ...left, ...right];
  return atRightAngles([...before, ...terms]).slice(atRightAngles(before).length);
}

/** Terms of each figure, then of each pair: every group at right angles in itself and to the constant. */
interface Expansion {
  groups: { terms: number[][]; places: number[] }[];
  solve: (response: readonly number[]) => LeastSquares;
  /** Noise of a grid's means; null where what the curves miss stands for it. */
  noise: number | null;
  points: number;
}

function expand({ response, noise, figures, grid }: JointQuestion, { degrees, pairs }: Structure): Expansion {
  const bases = [
    ...figures.map((columns, figure) => curves(columns, degrees[figure]!)),
    ...pairs.map((pair) => products(figures, degrees, pair)),
  ];
  let from = 1;
  const groups = bases.map((terms) => ({ terms, places: terms.map(() => from++) }));
  const solve = leastSquaresOn([response.map(() => 1), ...bases.flat()]);
  return { groups, solve, noise: grid ? noise : null, points: response.length };
}

interface Part {
  /** Over the points, what chance adds to it taken off. */
  variance: number;
  values: number[];
}

function partsOf({ groups, solve, noise, points }: Expansion, response: readonly number[]) {
  const fit = solve(response);
  const error = noise ?? fit.residualSquares / Math.max(1, points - fit.rank);
  const parts = groups.map(({ terms, places }): Part => {
    const coefficients = places.map((place) => fit.coefficients[place] ?? 0);
    const raw = compensatedSum(coefficients.map((value) => value * value));
    const chance = error * compensatedSum(places.map((place) => fit.spread[place] ?? 0));
    const pull = raw > chance ? Math.sqrt((raw - chance) / raw) : 0;
    const values = new Array<number>(points).fill(0);
    for (const [index, term] of terms.entries())
      for (let point = 0; point < points; point++) values[point]! += pull * coefficients[index]! * term[point]!;
    return { variance: (raw - chance) / (points - 1), values };
  });
  return { parts, fit };
}

/** A response as it might have been, and which points were drawn. */
interface Sample {
  response: readonly number[];
  rows: readonly number[];
}

function sharesIn({ response, rows }: Sample, { noise }: JointQuestion, expansion: Expansion): number[] {
  const at = (values: readonly number[]) => varianceOf(rows.map((row) => values[row]!));
  const whole = at(response) - noise;
  return partsOf(expansion, response).parts.map(({ values }) => (whole > 0 ? at(values) / whole : 0));
}

function samples({ response, grid, otherDays = [] }: JointQuestion, fit: LeastSquares): Sample[] {
  const rows = response.map((_, point) => point);
  if (grid) return otherDays.map((other) => ({ response: other, rows }));
  const uniforms = uniformStream("joint effects", 0, "samples", "points");
  const missed = fit.residuals.map((value, point) => value / Math.sqrt(Math.max(1e-9, 1 - fit.leverages[point]!)));
  return Array.from({ length: SAMPLES }, () => ({
    response: response.map((value, point) => {
      const sign = uniforms.next() < 0.5 ? -1 : 1;
      return value - fit.residuals[point]! + sign * missed[point]!;
    }),
    rows: rows.map(() => Math.floor(uniforms.next() * response.length)),
  }));
}

function explainedBy({ response, grid }: JointQuestion, { residuals, leverages, residualSquares }: LeastSquares) {
  const all = varianceOf(response) * (response.length - 1);
  const missed = grid
    ? residualSquares
    : compensatedSum(residuals.map((value, point) => (value / Math.max(1e-9, 1 - leverages[point]!)) ** 2));
  return Math.min(1, Math.max(0, 1 - missed / all));
}
