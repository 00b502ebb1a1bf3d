/** What can be wrong with a column of times. */

export { CHECK_ALPHA, CHECK_NAMES, type Check, type CheckName } from "./check.ts";
export { countCheck, LEAST_TO_FIT } from "./countCheck.ts";
export { dependenceCheck, lag1Correlation } from "./dependenceCheck.ts";
export { driftCheck, mannKendall } from "./driftCheck.ts";
export { mixtureCheck } from "./mixtureCheck.ts";
export { type Outlier, outlierCheck, outliersOf } from "./outlierCheck.ts";
export { roundingCheck } from "./roundingCheck.ts";
export { runsCheck, runsTest } from "./runsCheck.ts";
export { zeroCheck } from "./zeroCheck.ts";
