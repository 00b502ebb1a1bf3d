import type { UniformStream } from "../../../maths/random/index.ts";

/**
 * How many of a crew's first n people are missing today, for n = 0 .. people. One draw per person, so that a smaller crew
 * or another share keeps everybody else's luck.
 */
export function absentees(people: number, share: number, stream: () => UniformStream): Int32Array {
  const missing = new Int32Array(people + 1);
  if (share === 0) return missing;
  const draws = stream();
  for (let person = 0; person < people; person++) {
    missing[person + 1] = missing[person]! + (draws.next() < share ? 1 : 0);
  }
  return missing;
}
