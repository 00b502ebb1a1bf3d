import { availableParallelism } from "node:os";
import { setImmediate } from "node:timers/promises";
import { inThisThread, type OpenRunner } from "../days/run/index.ts";
import { queueAddress } from "./queueAddress.ts";
import type { Terminal } from "./terminal.ts";

/** With fewer days for each, starting a thread and getting its code fast takes longer than it saves. */
const LEAST_DAYS_PER_THREAD = 16;

export interface RunnerChoice {
  threads?: number;
  queue?: string;
}

/**
 * Where the days of a study are simulated: on a queue's workers, in as many threads as asked for, else in as many as
 * the machine has cores and the study has work for. Loaded only when it is needed.
 */
export async function chooseRunner(
  terminal: Terminal,
  days: number,
  version: string,
  { threads, queue }: RunnerChoice,
): Promise<OpenRunner> {
  if (queue !== undefined) {
    const { onQueue } = await import("../days/run/queue/index.ts");
    return onQueue(queueAddress(queue), { gambrel: version, say: (words) => terminal.say(words, "yellow") });
  }
  const count = Math.min(threads ?? Math.min(availableParallelism(), Math.ceil(days / LEAST_DAYS_PER_THREAD)), days);
  if (count <= 1) return inThisThread(setImmediate);
  const { inThreads } = await import("../days/run/threads/index.ts");
  return inThreads(count);
}
