import { splitBatches } from "./batch.ts";
import type { OpenRunner } from "./dayRunner.ts";
import { DaySimulator } from "./daySimulator.ts";

/** Simulates here, one day after another; `pause` gives way to timers, clicks and signals between two days. */
export function inThisThread(pause: () => Promise<void> = shortTimer): OpenRunner {
  return (source) => {
    const simulator = new DaySimulator(source);
    return {
      async run(batches, done, signal) {
        for (const day of splitBatches(batches, 1)) {
          signal?.throwIfAborted();
          done(simulator.simulateBatch(day));
          await pause();
        }
        signal?.throwIfAborted();
      },
      async close() {},
    };
  };
}

/** Exists in Node and in browsers alike. */
function shortTimer(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
