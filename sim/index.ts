/** The public door of the simulator. The pictures have their own: "gambrel/charts". */

// Reading what people write
export {
  type Fault,
  formatFault,
  type Plan,
  parseJson,
  planJsonSchema,
  readPlan,
  type TextFiles,
} from "./asked/plan/index.ts";
export { readStudy, type Study, studyJsonSchema } from "./asked/study/index.ts";
export { type DayOptions, type DayRecord, runDay, STATES } from "./day/engine/index.ts";
// One day
export { type CompiledLine, compileLine } from "./day/line/index.ts";
export { measure, type ResponseInfo, responsesOf } from "./day/observations/index.ts";
export {
  type DifferenceInWords as Difference,
  differenceInWords as pairedDifference,
  type StudyResults,
  type VariantResults,
} from "./days/results/index.ts";
export { type RunOptions, runSingleDay, runStudy } from "./days/run/index.ts";
// Many days
export { type Estimate, estimate } from "./maths/statistics/index.ts";
// Observed days against a plan
export { type Calibration, type CalibrationOptions, calibrate, readObserved } from "./questions/calibrate/index.ts";
// Measured times
export { type ColumnFit, type FitOptions, fitColumn, planFragment, readTimes } from "./questions/fit/index.ts";
