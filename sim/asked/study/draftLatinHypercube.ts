import { uniformStream } from "../../maths/random/index.ts";
import { changeAt } from "./changeAt.ts";
import { dimension } from "./dimension.ts";
import type { Dimension, Draft } from "./draft.ts";
import type { FactorFile } from "./schema/factorFile.ts";
import { shuffled } from "./shuffled.ts";

/** The sum below may round up to the end of the last slice, which is outside. */
const BELOW_ONE = 1 - Number.EPSILON / 2;

interface Drawing {
  factors: readonly FactorFile[];
  points: number;
  seed: string;
}

interface DrawnFactor {
  dimension: Dimension;
  /** Level index of each point. */
  levelOf: number[];
}

/** Variants at the points of a Latin hypercube. A range gets one level for each different value that was drawn. */
export function draftLatinHypercube({ factors, points, seed }: Drawing): Draft {
  const columns = latinHypercube(factors.length, points, seed);
  const drawn = factors.map((factor, index) => drawnFactor(factor, columns[index]!));
  const dimensions = drawn.map((one) => one.dimension);
  const variants = Array.from({ length: points }, (_, point) => {
    const levels = drawn.map(({ levelOf }) => levelOf[point]!);
    return { name: `point ${point + 1}`, levels, ...changeAt(dimensions, levels) };
  });
  return { dimensions, variants, design: { kind: "latin hypercube" }, baseHasLevels: false };
}

/** Levels of a range run from low to high; those of a list keep its order, each as likely as the others. */
function drawnFactor(factor: FactorFile, column: readonly number[]): DrawnFactor {
  const points = column.map((_, point) => point).sort((a, b) => column[a]! - column[b]!);
  const all = dimension(factor, (range) => points.map((point) => range.drawn(column[point]!)));
  const isRange = factor.options === undefined && (factor.sets?.[0] ?? factor).levels === undefined;
  const count = all.levels.length;
  return isRange
    ? mergeEqual(all, points)
    : { dimension: all, levelOf: column.map((fraction) => Math.floor(fraction * count)) };
}

/** Whole numbers and times of day come up more than once: equal values become one level. `points[i]` has level i. */
function mergeEqual(all: Dimension, points: readonly number[]): DrawnFactor {
  const known = new Map<string, number>();
  const kept: number[] = [];
  const levelOf: number[] = [];
  for (const [index, point] of points.entries()) {
    const written = JSON.stringify(all.changes[index]!.set);
    if (!known.has(written)) known.set(written, kept.push(index) - 1);
    levelOf[point] = known.get(written)!;
  }
  const [levels, changes] = [kept.map((index) => all.levels[index]!), kept.map((index) => all.changes[index]!)];
  return { dimension: { ...all, levels, changes }, levelOf };
}

/**
 * A Latin hypercube: for each factor a column of `points` numbers on [0, 1), one at random in each of `points` equal
 * slices, in random order (McKay, Beckman and Conover 1979, Technometrics 21(2)).
 *
 * `factors` and `points` whole, 1 or more. The seed alone decides; one more factor leaves the columns before it as they
 * were.
 *
 * @example latinHypercube(2, 4, "7") // two columns of four
 */
export function latinHypercube(factors: number, points: number, seed: string): number[][] {
  return Array.from({ length: factors }, (_, factor) => {
    const uniforms = uniformStream(seed, factor, "design", "latin hypercube");
    const slices = shuffled(points, uniforms);
    return slices.map((slice) => Math.min((slice + uniforms.next()) / points, BELOW_ONE));
  });
}
