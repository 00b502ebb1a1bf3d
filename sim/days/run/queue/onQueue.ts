import { Queue } from "bullmq";
import { batchSize, countDays, type OpenRunner, splitBatches } from "../index.ts";
import { makerMark } from "../wire/index.ts";
import { connect } from "./connect.ts";
import { PREFIX, QUEUE } from "./names.ts";
import { QueueRun } from "./queueRun.ts";
import { StudyStore } from "./studyStore.ts";
import { unlessLost } from "./unlessLost.ts";

export interface QueueOptions {
  /** Version of this program: workers of another one are told so and given nothing. */
  gambrel: string;
  /** Told, in words for people, what keeps the run waiting. */
  say: (words: string) => void;
}

/** Threads on all machines together that a study's tasks are cut for; it shows in no result. */
const THREADS = 64;
const STUCK_MS = 3000;

/** Simulates on the workers of the queue at this address (redis:// or rediss://), however many come and go. */
export function onQueue(address: string, { gambrel, say }: QueueOptions): OpenRunner {
  return async (source) => {
    const redis = await connect(address, say);
    const waiting = redis.duplicate();
    const queue = new Queue(QUEUE, { connection: redis, prefix: PREFIX });
    // The connection itself has told of it already.
    queue.on("error", () => {});
    waiting.on("error", () => {});
    const store = new StudyStore(redis, source);
    const run = new QueueRun({ queue, waiting, store, source, maker: makerMark(gambrel), address, say });
    return {
      async run(batches, done, signal) {
        const simulated = async (): Promise<void> => {
          await store.ensure();
          await run.handOut(splitBatches(batches, batchSize(countDays(batches), THREADS)));
          await run.gather(done, signal);
        };
        await unlessStuck(simulated(), signal);
        signal?.throwIfAborted();
      },
      async close() {
        waiting.disconnect();
        const cleared = async (): Promise<void> => {
          await run.takeBack();
          await store.remove();
          await tidy(queue);
          await queue.close();
        };
        await unlessLost(redis, cleared());
        redis.disconnect();
      },
    };
  };
}

/** Waits for work that looks at the signal about every second; when it does not end, the server is out of reach. */
async function unlessStuck(work: Promise<void>, signal: AbortSignal | undefined): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const stuck = new Promise<void>((resolve) => {
    signal?.addEventListener("abort", () => {
      timer = setTimeout(resolve, STUCK_MS);
    });
  });
  try {
    await Promise.race([work, stuck]);
  } finally {
    clearTimeout(timer);
    work.catch(() => {});
  }
}

/**
 * Takes the queue itself away when nothing is in it. Should another study be handing out tasks at this very moment, it
 * finds them missing and does so again.
 */
async function tidy(queue: Queue): Promise<void> {
  const counts = await queue.getJobCounts();
  if (Object.values(counts).every((count) => count === 0)) await queue.obliterate().catch(() => {});
}
