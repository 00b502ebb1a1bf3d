/** Larger batches stall the progress display and lose more work on a kill. */
const MOST = 16;
/** Batches per thread, at least: the last ones to finish then keep the others waiting for a small part of the run only. */
const MIN_PER_THREAD = 16;

/** Days per batch for so many days on so many threads. It shows in no result. */
export function batchSize(days: number, threads: number): number {
  return Math.max(1, Math.min(MOST, Math.floor(days / (threads * MIN_PER_THREAD))));
}
