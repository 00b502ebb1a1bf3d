import { uniformStream } from "../../maths/random/index.ts";
import { shuffled } from "./shuffled.ts";

/** The sum below may round up to the end of the last slice, which is outside. */
const BELOW_ONE = 1 - Number.EPSILON / 2;

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
