import type { Learning } from "../../asked/plan/plan.ts";
import type { LearningColumns } from "./compiledLine.ts";

/**
 * Wright's law for units (T. P. Wright, Journal of the Aeronautical Sciences 3, 1936; unit reading, Crawford) as a table: at the
 * heads done n = known / 2^(k/8) the cycle is multiplied by rate^(-k/8), exactly; between two rows a straight line lies above the law by
 * less than 0.2 % of it at any rate from 50 % on. Made of square roots alone, which are the same on every machine.
 */
export function learningColumns({ rate, known, done }: Learning): LearningColumns {
  const [heads, factor] = [[known as number], [1]];
  const [step, slower] = [eighthRoot(2), eighthRoot(rate)];
  while (heads[0]! > 1) {
    heads.unshift(heads[0]! / step);
    factor.unshift(factor[0]! / slower);
  }
  return { heads: Float64Array.from(heads), factor: Float64Array.from(factor), done };
}

function eighthRoot(value: number): number {
  return Math.sqrt(Math.sqrt(Math.sqrt(value)));
}
