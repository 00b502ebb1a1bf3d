import { type Check, fine, look, strong } from "./check.ts";

/** Fewer ended times than this are not fitted: any family would pass. Our own rule. */
export const MIN_TO_FIT = 8;
/** Fewer than this rarely tell one family from another. Our own rule. */
const FEW = 30;

/** Whether there are enough ended times to choose a distribution. */
export function countCheck(ended: number): Check {
  if (ended < MIN_TO_FIT) {
    return strong(
      "number of times",
      `${ended} times that ended are too few to fit anything; ${MIN_TO_FIT} are needed.`,
    );
  }
  if (ended < FEW) {
    return look("number of times", `${ended} times hardly tell one family from another; take ${FEW} or more.`);
  }
  return fine("number of times", `${ended} times.`);
}
