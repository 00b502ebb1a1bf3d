/** Measures of many days -> estimates with intervals, comparisons, choice of the best. */

// One response over replications

export { type Estimate, estimate } from "./estimate.ts";
export { estimateWithin, type Support, within } from "./estimateWithin.ts";
export { replicationsNeeded } from "./replicationsNeeded.ts";
export { type Precision, type SequentialRule, type SequentialState, sequentialState } from "./sequentialState.ts";

// Quantiles and shares

export { exactShareInterval } from "./exactShareInterval.ts";
export { quantile } from "./quantile.ts";
export { type QuantileEstimate, quantileInterval } from "./quantileInterval.ts";
export { type QuantileRanks, quantileRanks } from "./quantileRanks.ts";
export { shareEstimate } from "./shareEstimate.ts";
export { shareInterval } from "./shareInterval.ts";

// Comparisons

export { type AdjustedP, adjustedP } from "./adjustedP.ts";
export { type Comparison, type ComparisonOptions, compareAll, type ErrorRate } from "./compareAll.ts";
export { formatP } from "./formatP.ts";
export { noticeableShift } from "./noticeableShift.ts";
export { type PairedDifference, pairedDifference, type Scale } from "./pairedDifference.ts";
export { pairedTest, type TTest } from "./pairedTest.ts";
export { type IndependentDifference, welchDifference } from "./welchDifference.ts";

// Choice of the best

export { type AgainstBest, compareWithBest } from "./compareWithBest.ts";
export { type KimNelsonConstants, kimNelsonConstants } from "./kimNelsonConstants.ts";
export {
  type Dropped,
  nextBatch,
  observe,
  type SelectionBatch,
  type SelectionQuestion,
  type SelectionState,
  startSelection,
  type Verdict,
  verdict,
} from "./selection.ts";

// Screening and levels

export { type ElementaryEffects, elementaryEffects, type TrajectoryPoint } from "./elementaryEffects.ts";
export { type LevelStep, levelSteps } from "./levelSteps.ts";

// What luck does, and what is not known

export { afterReadings } from "./afterReadings.ts";
export {
  type EffectShare,
  type JointEffects,
  type JointFigure,
  type JointPair,
  jointEffects,
} from "./jointEffects.ts";
export { type MainEffect, type MainEffects, mainEffects } from "./mainEffects.ts";
export { type PosteriorQuestion, posteriorDraws } from "./posteriorDraws.ts";
export { type VarianceComponents, varianceComponents } from "./varianceComponents.ts";
export { daysPerWorld, furtherWorlds, halfWidthOfWorlds, type TwoStageVariance } from "./worldsAndDays.ts";
export {
  chanceAboveZero,
  chancesToBeBest,
  type Lead,
  type WorthOfKnowing,
  withoutLuck,
  worthOfKnowing,
} from "./worthOfKnowing.ts";

// With less luck in it

export { type AntitheticEstimate, antitheticEstimate } from "./antitheticEstimate.ts";
export {
  type ControlUsed,
  type ControlValues,
  type ControlVariateEstimate,
  controlVariateEstimate,
} from "./controlVariateEstimate.ts";
export { pairMeans } from "./pairMeans.ts";

// One long run

export { type BatchMeans, batchMeans } from "./batchMeans.ts";
export { mser, type WarmUp } from "./mser.ts";
export { mser5 } from "./mser5.ts";
export { welchAverage } from "./welchAverage.ts";

// Ground work

export { bonferroniQuantile } from "./bonferroniQuantile.ts";
export { compensatedSum } from "./compensatedSum.ts";
export { normalQuantile } from "./normalQuantile.ts";
export { RunningMoments } from "./runningMoments.ts";
export { studentQuantile } from "./studentQuantile.ts";
export { studentTwoSidedP } from "./studentTwoSidedP.ts";
