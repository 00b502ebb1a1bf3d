/** A compiled line and a seed -> one day. See README.md, the contract. */

// One day

export type { HeadWatcher } from "./headWatcher.ts";
export { recordOf } from "./recordOf.ts";
export { advance, runDay, startDay } from "./runDay.ts";
export type { DayOptions, DayState } from "./state/dayState.ts";

// Days one after another

export { type DaysOptions, runDays, type WorkingDay } from "./overnight/runDays.ts";
export { type CompiledWeek, compileWeek, runWeek } from "./overnight/runWeek.ts";

// What can go wrong

export { ConservationError } from "./conservation.ts";
export { DayTooLong, PlantTooFull } from "./dayTooLong.ts";

// What it leaves behind

export { CAUSES, type Cause, type PathCell } from "./binding/pathCells.ts";
export * from "./dayRecord.ts";
