// One day

export { CAUSES, type Cause, type PathCell } from "./binding/pathCells.ts";
export { ConservationError } from "./conservation.ts";
// What it leaves behind
export * from "./dayRecord.ts";
export { DayTooLong, PlantTooFull } from "./dayTooLong.ts";
export type { HeadWatcher } from "./headWatcher.ts";
export { recordOf } from "./recordOf.ts";
export { advance, runDay, startDay } from "./runDay.ts";
export type { DayOptions, DayState } from "./state/dayState.ts";
