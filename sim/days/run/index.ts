/**
 * Spreads (variant, replication) and gathers the results. Other threads, the journal and the queue are rooms of their
 * own below this one: they need Node, this one runs in a browser too.
 */

// A study, or one day

export type { Provenance } from "./assembleResults.ts";
export { runSingleDay, type SingleDayOptions } from "./runSingleDay.ts";
export { type DayJournal, type RunOptions, runStudy, type Simulate, simulateWith } from "./runStudy.ts";
export { singleDayStudy } from "./singleDayStudy.ts";

// What stops it

export { MAX_DAYS, MAX_EVENTS, TooManyDays } from "./ceilings.ts";
export { DaysFailed } from "./daysFailed.ts";

// For places that simulate days

export { type Batch, countDays, splitBatches } from "./batch.ts";
export { batchSize } from "./batchSize.ts";
export type { DayRunner, OpenRunner } from "./dayRunner.ts";
export { DaySimulator } from "./daySimulator.ts";
export { type DaySource, daySource, type TraceKind } from "./daySource.ts";
export { inThisThread } from "./inThisThread.ts";
export type { BatchResult, FailedDay, SimulatedDay } from "./simulatedDay.ts";

// In words

export { stopWarning } from "./stopAdvice.ts";
export { shownAddress, withoutPassword } from "./withoutPassword.ts";
