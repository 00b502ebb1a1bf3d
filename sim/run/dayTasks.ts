import type { Study } from "../study/index.ts";

/** How much of a day's course is kept: nothing, bins that lose no peak, or every step. */
export type TraceKind = "none" | "binned" | "exact";

/** One day to simulate. `variant` is an index into the study's variants. */
export interface DayTask {
  variant: number;
  replication: number;
  traces: TraceKind;
  /** Whether the day itself is kept, not only its measures. */
  keepDay: boolean;
}

/**
 * Every day of a study, variant by variant. A replication has the same number, and with the study's seed the same
 * random numbers, in every variant: differences are of the variants, not of the luck (common random numbers). Of each
 * variant, replication 0 is kept as a day with its traces.
 */
export function dayTasks(study: Study, traces: TraceKind): DayTask[] {
  return study.variants.flatMap((_, variant) =>
    Array.from({ length: study.replications }, (_, replication): DayTask => {
      const first = replication === 0;
      return { variant, replication, traces: first ? traces : "none", keepDay: first };
    }),
  );
}
