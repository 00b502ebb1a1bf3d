/**
 * The public door of the simulator. The pictures have their own: "gambrel/charts". Everything that is read from JSON comes
 * back checked, with all faults at once; everything that is simulated is a pure function of what it is asked and its seed.
 */

// What people write, checked

export {
  type Fault,
  formatFault,
  type Plan,
  type PlanReading,
  parseJson,
  planJsonSchema,
  readPlan,
  type TextFiles,
} from "./asked/plan/index.ts";
export {
  readStudy,
  type Study,
  type StudyOptions,
  type StudyReading,
  studyJsonSchema,
} from "./asked/study/index.ts";

// One day

export { ConservationError, type DayOptions, type DayRecord, DayTooLong, runDay, STATES } from "./day/engine/index.ts";
export { type CompiledLine, compileLine } from "./day/line/index.ts";
export { measure, type ResponseInfo, responsesOf } from "./day/observations/index.ts";

// Many days, in this thread or in several

export {
  DaysFailed,
  type OpenRunner,
  type Provenance,
  type RunOptions,
  runSingleDay,
  runStudy,
  type Simulate,
  type SingleDayOptions,
  simulateWith,
  TooManyDays,
} from "./days/run/index.ts";
export { inThreads } from "./days/run/threads/index.ts";

// What they came to, and the folder that keeps it

export {
  type DifferenceInWords,
  differenceInWords,
  type ReadResults,
  type RunFile,
  type RunFolderReading,
  type RunParts,
  readResults,
  readRunFolder,
  runFiles,
  type StudyResults,
  stableJson,
  type VariantResults,
  writeRunFolder,
} from "./days/results/index.ts";
export { type Estimate, estimate } from "./maths/statistics/index.ts";

// From a weekly demand to a first plan: size

export {
  ALTERNATIVES,
  type AlternativeName,
  type Demand,
  type DemandReading,
  demandJsonSchema,
  type Figure,
  type PlantDesign,
  readDemand,
  type Sizing,
  sizePlant,
} from "./questions/size/index.ts";

// What to change first: why

export type { Advice, ReasonPart, SlopeEstimate, TriedChange, Why } from "./days/results/index.ts";
export { answerWhy, type WhyOptions, type WhyTools } from "./questions/why/index.ts";

// What suppliers' offers are worth: options

export {
  type Appraisal,
  appraise,
  compareOffers,
  type OfferCost,
  type OfferWorth,
  type OptionsQuestion,
  type OptionsReading,
  type OptionsResult,
  optionsJsonSchema,
  readOptions,
  readOptionsResult,
} from "./questions/options/index.ts";

// How a total is best shared out: improve

export {
  type CandidateDesign,
  type Improvement,
  type ImproveQuestion,
  type ImproveReading,
  type ImproveTools,
  improve,
  improveJsonSchema,
  improvementStudy,
  readImprove,
  readImprovement,
} from "./questions/improve/index.ts";

// From measured times to distributions: fit

export {
  type Check,
  type ColumnFit,
  type FamilyFit,
  type FitAdvice,
  type FitOptions,
  type FitPicture,
  fitColumn,
  fitPicture,
  type ObservedTime,
  type PlanFragment,
  planFragment,
  readTimes,
  type TimesColumn,
  type TimesOptions,
  type TimesReading,
} from "./questions/fit/index.ts";

// Observed days against a plan: calibrate

export {
  type Calibration,
  type CalibrationOptions,
  type ComparedDays,
  type ComparedQuantity,
  calibrate,
  countingStages,
  type Explanation,
  type NoticeableFigure,
  type Observed,
  type ObservedReading,
  readObserved,
  type Side,
  usualCountingStage,
} from "./questions/calibrate/index.ts";
