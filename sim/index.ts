/** The public door of the simulator. The pictures have their own: "gambrel/charts". */

// Observed days against a plan
export { type Calibration, type CalibrationOptions, calibrate, readObserved } from "./calibrate/index.ts";
export { type DayOptions, type DayRecord, runDay, STATES } from "./engine/index.ts";
// Measured times
export { type ColumnFit, type FitOptions, fitColumn, planFragment, readTimes } from "./fit/index.ts";
// One day
export { type CompiledLine, compileLine } from "./line/index.ts";
export { measure, type ResponseInfo, responsesOf } from "./observations/index.ts";
// Reading what people write
export {
  type Fault,
  formatFault,
  type Plan,
  parseJson,
  planJsonSchema,
  readPlan,
  type TextFiles,
} from "./plan/index.ts";
export {
  type DifferenceInWords as Difference,
  differenceInWords as pairedDifference,
  type StudyResults,
  type VariantResults,
} from "./results/index.ts";
export { type RunOptions, runSingleDay, runStudy } from "./run/index.ts";
// Many days
export { type Estimate, estimate } from "./statistics/index.ts";
export { readStudy, type Study, studyJsonSchema } from "./study/index.ts";
