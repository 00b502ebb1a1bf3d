import type { Piscina } from "piscina";
import {
  type Batch,
  type BatchResult,
  batchSize,
  countDays,
  type DaySource,
  type OpenRunner,
  splitBatches,
} from "../index.ts";
import type { LastingTask } from "./lastingThread.ts";
import { StopFlag } from "./stopFlag.ts";
import { threadPool } from "./threadPool.ts";

/** Threads that are kept from study to study. */
export interface LastingThreads {
  /** Simulates the days of one study in them; studies come one after another. */
  runner: OpenRunner;
  close(): Promise<void>;
}

/**
 * So many worker threads for a question that simulates many studies: they are started once, so that no round of a search
 * waits for them to load the program and to become quick at it. The same results to the bit as `inThreads`. Needs Node. Example:
 *
 *     const threads = lastingThreads(2);
 *     await runStudy(first, { ...options, runner: threads.runner });
 *     await runStudy(second, { ...options, runner: threads.runner });
 *     await threads.close();
 */
export function lastingThreads(threads: number): LastingThreads {
  const flag = new StopFlag();
  const pool = threadPool<LastingTask, BatchResult>({ beside: import.meta.url, name: "lastingThread" }, threads, {
    stop: flag.shared,
  });
  let studies = 0;
  return {
    runner(source) {
      const study = ++studies;
      return {
        async run(batches, done, signal) {
          const stop = (): void => flag.raise();
          signal?.addEventListener("abort", stop);
          try {
            const parts = splitBatches(batches, batchSize(countDays(batches), threads));
            await Promise.all(parts.map(async (part) => done(await simulated(pool, study, source, part))));
          } finally {
            signal?.removeEventListener("abort", stop);
          }
          signal?.throwIfAborted();
        },
        async close() {},
      };
    },
    close: () => pool.destroy(),
  };
}

/** A thread is sent the plan of the batch alone. */
async function simulated(
  pool: Piscina<LastingTask, BatchResult>,
  study: number,
  source: DaySource,
  { variant, ...rest }: Batch,
): Promise<BatchResult> {
  const own = {
    ...source,
    plans: [source.plans[variant]!],
    traces: variant === 0 || source.traces === "all" ? source.traces : "none",
  } as const;
  const { days, failed } = await pool.run({ study, variant, source: own, batch: { variant: 0, ...rest } });
  return {
    days: days.map((day) => ({ ...day, variant })),
    failed: failed.map((day) => ({ ...day, variant })),
  };
}
