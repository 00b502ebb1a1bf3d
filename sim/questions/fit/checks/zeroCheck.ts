import { type Check, fine, look } from "./check.ts";

/** Zeros are left out of every fit: no work takes no time, and most families cannot hold them. */
export function zeroCheck(zeros: number): Check {
  if (zeros === 0) return fine("zeros", "No zeros.");
  const count = zeros === 1 ? "1 time of 0 is" : `${zeros} times of 0 are`;
  return look("zeros", `${count} left out of the fits; a slip of the stopwatch, or work that was skipped?`);
}
