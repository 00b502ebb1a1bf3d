/** Measures of many days -> estimates with intervals. */

// Ground work
export { compensatedSum } from "./compensatedSum.ts";
// One response over replications
export { type Estimate, estimate } from "./estimate.ts";
export { normalQuantile } from "./normalQuantile.ts";
export { type Difference, pairedDifference } from "./pairedDifference.ts";
// Quantiles and shares
export { quantile } from "./quantile.ts";
export { type QuantileEstimate, quantileInterval } from "./quantileInterval.ts";
export { type QuantileRanks, quantileRanks } from "./quantileRanks.ts";
export { replicationsNeeded } from "./replicationsNeeded.ts";
export { RunningMoments } from "./runningMoments.ts";
export { shareInterval } from "./shareInterval.ts";
export { studentQuantile } from "./studentQuantile.ts";
