import type { Batch } from "./batch.ts";
import type { DaySource } from "./daySource.ts";
import type { BatchResult } from "./simulatedDay.ts";

/** A place where days are simulated: this thread, others, other machines. */
export interface DayRunner {
  /**
   * Simulates every day of the batches, which it may cut into smaller ones, and gives each part of the result to `done`
   * as it comes, in any order; a day may come twice. Rejects with the signal's reason once that is aborted, after
   * having given away what was finished.
   */
  run(batches: readonly Batch[], done: (result: BatchResult) => void, signal?: AbortSignal): Promise<void>;
  /** Gives back threads and connections. */
  close(): Promise<void>;
}

/** Sets a runner up for the days of one study. */
export type OpenRunner = (source: DaySource) => DayRunner | Promise<DayRunner>;
