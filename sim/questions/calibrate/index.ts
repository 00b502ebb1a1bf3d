/** Observed days against simulated ones. */

// Observed days

export { countingStages, usualCountingStage } from "./countingStage.ts";
export type { Observed, ObservedQuantity } from "./observed.ts";
export type { Quantity } from "./quantity.ts";
export { type ObservedReading, readObserved } from "./readObserved.ts";

// The comparison

export { type Calibration, type CalibrationOptions, type ComparedQuantity, calibrate } from "./calibrate.ts";
export { type CalibrationVerdict, calibrationVerdict } from "./calibrationVerdict.ts";
export { type ComparedDays, POWER, type Side } from "./compare.ts";

// What would explain it, and what would pass unnoticed

export type { Explanation } from "./explanation.ts";
export type { NoticeableFigure } from "./noticeableFigures.ts";

// For both

export { type PlanFigure, parametersOf } from "./parameter.ts";
export { type Simulation, simulatedValues } from "./simulatedValues.ts";

// What uncertain figures may still be

export { type NarrowedUncertain, type NarrowingOptions, narrowUncertain } from "./narrowUncertain.ts";
