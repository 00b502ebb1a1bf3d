import { hostname } from "node:os";
import { DelayedError, type Job } from "bullmq";
import type { Redis } from "ioredis";
import { exactJson, type MakerMark, makerDifference } from "../wire/index.ts";
import { fetchTask, readTask } from "./fetchTask.ts";
import { TASK, type Task } from "./payloads.ts";
import type { ThreadTask } from "./queueThread.ts";
import { sendAnswer } from "./sendAnswer.ts";

/** A task that was refused lies so long before the next worker may look at it. */
const REFUSED_MS = 500;

export interface DeskParts {
  redis: Redis;
  maker: MakerMark;
  say: (words: string) => void;
  /** Lets other workers go first for a while. */
  stepBack: () => void;
}

/** Takes tasks of the right program, and answers. */
export class TaskDesk {
  readonly #parts: DeskParts;

  constructor(parts: DeskParts) {
    this.#parts = parts;
  }

  async serve(
    job: Job<unknown>,
    token: string | undefined,
    simulate: (task: ThreadTask) => Promise<string>,
  ): Promise<void> {
    const { redis, say } = this.#parts;
    const task = readTask(job.data);
    await this.#refuseOther(job, token, task);
    const { study, variant, first, count } = task;
    await sendAnswer(redis, study, await simulate(await fetchTask(redis, job.id!, task)));
    say(
      `Study ${study.slice(0, 8)}, variant ${variant}: ${count} ${count === 1 ? "day" : "days"} done, from day ${first} on.`,
    );
  }

  /** A task of another version goes back, for a worker of that version to find. */
  async #refuseOther(job: Job<unknown>, token: string | undefined, task: Task): Promise<void> {
    const { redis, maker, say, stepBack } = this.#parts;
    const difference = makerDifference(task.maker, maker);
    if (difference === null) return;
    const words = `The worker on ${hostname()} takes no task of this study: ${difference}. Put the same version on both.`;
    say(words);
    await sendAnswer(redis, task.study, exactJson({ refused: words }));
    stepBack();
    await job.moveToDelayed(Date.now() + REFUSED_MS, token);
    throw new DelayedError();
  }

  async tellFailure(job: Job<unknown> | undefined, { message }: Error): Promise<void> {
    const { redis, say } = this.#parts;
    say(`A task failed: ${message}`);
    const task = TASK.safeParse(job?.data);
    if (task.success) await sendAnswer(redis, task.data.study, exactJson({ task: job!.id, error: message }));
  }
}
