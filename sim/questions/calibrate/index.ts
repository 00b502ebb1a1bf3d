// Observed days against simulated ones

export { type Calibration, type CalibrationOptions, type ComparedQuantity, calibrate } from "./calibrate.ts";
export { type ComparedDays, POWER, type Side } from "./compare.ts";
export { countingStages, usualCountingStage } from "./countingStage.ts";
export type { Explanation } from "./explanation.ts";
export type { NoticeableFigure } from "./noticeableFigures.ts";
export type { Observed, ObservedQuantity } from "./observed.ts";
export { type PlanFigure, parametersOf } from "./parameter.ts";
export type { Quantity } from "./quantity.ts";
export { type ObservedReading, readObserved } from "./readObserved.ts";
export { type Simulation, simulatedValues } from "./simulatedValues.ts";
