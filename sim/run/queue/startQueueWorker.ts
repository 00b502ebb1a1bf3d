import { hostname } from "node:os";
import { DelayedError, type Job, Worker } from "bullmq";
import type { Redis } from "ioredis";
import { withoutPassword } from "../index.ts";
import { threadPool } from "../threads/index.ts";
import { exactJson, type MakerMark, makerDifference, makerMark } from "../wire/index.ts";
import { connect } from "./connect.ts";
import { fetchTask, readTask } from "./fetchTask.ts";
import { PREFIX, QUEUE } from "./names.ts";
import { TASK, type Task } from "./payloads.ts";
import type { ThreadTask } from "./queueThread.ts";
import { sendAnswer } from "./sendAnswer.ts";

/** So many workers may die over a task before it is taken for the cause. */
const MOST_DEATHS = 3;
/** A task that was refused lies so long before the next worker may look at it. */
const REFUSED_MS = 2000;

export interface WorkerOptions {
  gambrel: string;
  /** Tasks at a time, each in a thread of its own. */
  concurrency: number;
  /** A task whose worker has not been heard of for so long is handed to another one. */
  lostAfterSeconds: number;
  /** Told, in words for people, of every task and of what goes wrong. */
  say: (words: string) => void;
}

export interface QueueWorker {
  /** Finishes the tasks in hand and takes no more. */
  close(): Promise<void>;
}

/** Simulates the days of whatever study comes by the queue at this address. */
export async function startQueueWorker(address: string, options: WorkerOptions): Promise<QueueWorker> {
  const { concurrency, lostAfterSeconds, say } = options;
  const redis = await connect(address, say);
  const pool = threadPool<ThreadTask, string>({ beside: import.meta.url, name: "queueThread" }, concurrency);
  const desk = new Desk(redis, makerMark(options.gambrel), say);
  const worker = new Worker<unknown>(QUEUE, (job, token) => desk.serve(job, token, (task) => pool.run(task)), {
    connection: redis,
    prefix: PREFIX,
    concurrency,
    lockDuration: lostAfterSeconds * 1000,
    stalledInterval: (lostAfterSeconds * 1000) / 2,
    maxStalledCount: MOST_DEATHS,
  });
  worker.on("error", (error) => say(withoutPassword(error.message, address)));
  worker.on("failed", (job, error) => desk.tellFailure(job, error).catch(() => {}));
  return {
    async close() {
      await worker.close();
      await pool.destroy();
      redis.disconnect();
    },
  };
}

/** Takes tasks of the right program, and answers. */
class Desk {
  readonly #redis: Redis;
  readonly #maker: MakerMark;
  readonly #say: (words: string) => void;

  constructor(redis: Redis, maker: MakerMark, say: (words: string) => void) {
    this.#redis = redis;
    this.#maker = maker;
    this.#say = say;
  }

  async serve(
    job: Job<unknown>,
    token: string | undefined,
    simulate: (task: ThreadTask) => Promise<string>,
  ): Promise<void> {
    const task = readTask(job.data);
    await this.#refuseOther(job, token, task);
    const { study, variant, first, count } = task;
    await sendAnswer(this.#redis, study, await simulate(await fetchTask(this.#redis, job.id!, task)));
    this.#say(`study ${study.slice(0, 8)}: variant ${variant}, days ${first} to ${first + count - 1} done`);
  }

  /** A task of another version goes back, for a worker of that version to find. */
  async #refuseOther(job: Job<unknown>, token: string | undefined, { maker, study }: Task): Promise<void> {
    const difference = makerDifference(maker, this.#maker);
    if (difference === null) return;
    const words = `The worker on ${hostname()} takes no task of this study: ${difference}. Put the same version on both.`;
    this.#say(words);
    await sendAnswer(this.#redis, study, exactJson({ refused: words }));
    await job.moveToDelayed(Date.now() + REFUSED_MS, token);
    throw new DelayedError();
  }

  async tellFailure(job: Job<unknown> | undefined, { message }: Error): Promise<void> {
    this.#say(`A task failed: ${message}`);
    const task = TASK.safeParse(job?.data);
    if (task.success) await sendAnswer(this.#redis, task.data.study, exactJson({ task: job!.id, error: message }));
  }
}
