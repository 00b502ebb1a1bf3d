/** From a table of times to distributions for a plan. */

// The table

export { readTimes, type TimesOptions, type TimesReading } from "./times/readTimes.ts";
export type { Subject } from "./times/subject.ts";
export type { ObservedTime, TimesColumn } from "./times/timesColumn.ts";

// The fits of a column

export { type Check, type CheckName, LOOK_ALPHA, STRONG_ALPHA } from "./checks/index.ts";
export type { ColumnFit, FamilyFit, FitAdvice, Summary } from "./columnFit.ts";
export { FAMILY_NAMES, type FamilyName } from "./family.ts";
export { type FitOptions, fitColumn } from "./fitColumn.ts";

// What comes of them

export { type ColumnAnswer, type FitAnswer, fitAnswer } from "./fitAnswer.ts";
export { type FitPicture, fitPicture, type QuantilePoint } from "./fitPicture.ts";
export { type PlanFragment, planFragment } from "./planFragment.ts";
export { type UncertainEntry, uncertainEntries } from "./uncertainEntries.ts";
