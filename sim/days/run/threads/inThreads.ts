import { type Batch, type BatchResult, batchSize, countDays, type OpenRunner, splitBatches } from "../index.ts";
import { StopFlag } from "./stopFlag.ts";
import type { StudyThreadData } from "./studyThread.ts";
import { threadPool } from "./threadPool.ts";

/**
 * Simulates in so many worker threads. Each is given the study once and compiles the lines of the variants that it meets; only
 * numbers travel back, and the first day of each variant. Any number of threads (1 or more) gives the same results to the
 * bit; a thread is worth its start from about 16 days on. Needs Node. Example:
 *
 *     await runStudy(study, { gambrel: "my program 1.0", command: "", runner: inThreads(4) });
 */
export function inThreads(threads: number): OpenRunner {
  return (source) => {
    const flag = new StopFlag();
    const data: StudyThreadData = { source, stop: flag.shared };
    const pool = threadPool<Batch, BatchResult>({ beside: import.meta.url, name: "studyThread" }, threads, data);
    return {
      async run(batches, done, signal) {
        const stop = (): void => flag.raise();
        signal?.addEventListener("abort", stop);
        try {
          const parts = splitBatches(batches, batchSize(countDays(batches), threads));
          await Promise.all(parts.map(async (part) => done(await pool.run(part))));
        } finally {
          signal?.removeEventListener("abort", stop);
        }
        signal?.throwIfAborted();
      },
      close: () => pool.destroy(),
    };
  };
}
