import { availableParallelism } from "node:os";
import process from "node:process";
import { shownAddress } from "../../days/run/index.ts";
import { queueAddress } from "../commandLine.ts";
import { Stopped } from "../faults.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { programVersion } from "../project.ts";
import type { Terminal } from "../terminal.ts";
import { interruption, untilInterrupted } from "../terminal.ts";

export interface WorkerCommandOptions {
  queue: string;
  concurrency?: number;
  lostAfter: number;
  ceiling?: Partial<Ceilings>;
}

/** Simulates for others until it is stopped; the tasks in hand are finished first. */
export async function workerCommand(terminal: Terminal, options: WorkerCommandOptions): Promise<void> {
  const { concurrency = availableParallelism(), lostAfter } = options;
  const { startQueueWorker } = await import("../../days/run/queue/index.ts");
  await untilInterrupted(process, async (signal) => {
    const worker = await startQueueWorker(queueAddress(options.queue), {
      gambrel: programVersion(),
      concurrency,
      lostAfterSeconds: lostAfter,
      mostEvents: ceilingsOf(options).events,
      say: (words) => terminal.say(words),
    });
    terminal.say(
      `Waiting for work at ${shownAddress(options.queue)}, ${concurrency} at a time. Ctrl-C ends it.`,
      "bold",
    );
    await interruption(signal);
    terminal.say("Finishing the tasks in hand. Press Ctrl-C again to drop them; another worker will do them.");
    const finished = await worker.close();
    const words = finished
      ? "All its tasks are finished."
      : "The queue does not answer; other workers will do its tasks.";
    throw new Stopped((signal.reason as Stopped).signal, `Stopped. ${words}`);
  });
}
