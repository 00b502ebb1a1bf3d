/** What can be wrong with a column of times. */

export { type CensoredTrend, censoredTrend, type OrderedTime } from "./censoredTrend.ts";
export { CHECK_NAMES, type Check, type CheckName, LOOK_ALPHA, STRONG_ALPHA } from "./check.ts";
export { countCheck, MIN_TO_FIT } from "./countCheck.ts";
export { dependenceCheck, lag1Correlation, logRankScores } from "./dependenceCheck.ts";
export { driftCheck, mannKendall, sizeOfDrift } from "./driftCheck.ts";
export { mixtureCheck } from "./mixtureCheck.ts";
export { type Outlier, outlierCheck, outliersOf } from "./outlierCheck.ts";
export { roundingCheck } from "./roundingCheck.ts";
export { runsCheck, runsTest } from "./runsCheck.ts";
export { zeroCheck } from "./zeroCheck.ts";
