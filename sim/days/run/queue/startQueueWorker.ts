import { hostname } from "node:os";
import { pid } from "node:process";
import { Worker } from "bullmq";
import { MAX_EVENTS, withoutPassword } from "../index.ts";
import { threadPool } from "../threads/index.ts";
import { makerMark } from "../wire/index.ts";
import { connect } from "./connect.ts";
import { PREFIX, QUEUE } from "./names.ts";
import type { ThreadTask } from "./queueThread.ts";
import { TaskDesk } from "./taskDesk.ts";
import { unlessLost } from "./unlessLost.ts";

/** So many workers may die over a task before it is taken for the cause. */
const MAX_DEATHS = 3;
/** A worker that refused a task takes nothing for so long, or it would be the next one to be asked again. */
const STEP_BACK_MS = 5000;

export interface WorkerOptions {
  gambrel: string;
  /** Tasks at a time, each in a thread of its own. */
  concurrency: number;
  /** A task whose worker has not been heard of for so long is handed to another one. */
  lostAfterSeconds: number;
  /** A day with more events fails, whatever the study allows; 100 million when left out. */
  mostEvents?: number;
  /** Told, in words for people, of every task and of what goes wrong. */
  say: (words: string) => void;
}

export interface QueueWorker {
  /** Finishes the tasks in hand and takes no more; gives false when the queue was out of reach and they go to others. */
  close(): Promise<boolean>;
}

/** Simulates the days of whatever study comes by the queue at this address. */
export async function startQueueWorker(address: string, options: WorkerOptions): Promise<QueueWorker> {
  const { concurrency, lostAfterSeconds, mostEvents = MAX_EVENTS, say } = options;
  const redis = await connect(address, say);
  const pool = threadPool<ThreadTask, string>({ beside: import.meta.url, name: "queueThread" }, concurrency);
  const desk = new TaskDesk({ redis, maker: makerMark(options.gambrel), say, stepBack: () => stepBack() });
  const worker = new Worker<unknown>(
    QUEUE,
    (job, token) => desk.serve(job, token, (task) => pool.run(withinMost(task, mostEvents))),
    {
      connection: redis,
      prefix: PREFIX,
      name: `${hostname()}-${pid}`,
      concurrency,
      lockDuration: lostAfterSeconds * 1000,
      stalledInterval: (lostAfterSeconds * 1000) / 2,
      maxStalledCount: MAX_DEATHS,
    },
  );
  worker.on("error", (error) => {
    // Of a lost connection the connection itself has told already.
    if (redis.status === "ready") say(withoutPassword(error.message, address));
  });
  worker.on("failed", (job, error) => desk.tellFailure(job, error).catch(() => {}));
  let comesBack: NodeJS.Timeout | undefined;
  const stepBack = (): void => {
    if (worker.isPaused()) return;
    void worker.pause(true);
    comesBack = setTimeout(() => worker.resume(), STEP_BACK_MS);
  };
  return {
    async close() {
      clearTimeout(comesBack);
      const finished = await unlessLost(redis, worker.close());
      await pool.destroy();
      redis.disconnect();
      return finished;
    },
  };
}

/** Whoever hands a study out may allow its days less than this worker does, never more. */
function withinMost({ about, ...task }: ThreadTask, most: number): ThreadTask {
  return { ...task, about: { ...about, mostEvents: Math.min(about.mostEvents, most) } };
}
