/** Spreads (variant, replication) and gathers the results. */

export type { Provenance } from "./assembleResults.ts";
export type { TraceKind } from "./dayTasks.ts";
export { runSingleDay, type SingleDayOptions } from "./runSingleDay.ts";
export { type RunOptions, runStudy } from "./runStudy.ts";
