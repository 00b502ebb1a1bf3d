import { hostname } from "node:os";
import { DelayedError, type Job, UnrecoverableError } from "bullmq";
import type { Redis } from "ioredis";
import { exactJson, type MakerMark, makerDifference, parseExactJson } from "../wire/index.ts";
import { ABOUT, answersKey, STUDY_SECONDS, studyKey } from "./names.ts";
import { PLAN_SHAPE, STUDY_ABOUT, TASK, type Task } from "./payloads.ts";
import type { ThreadTask } from "./queueThread.ts";

/** Only while the study is there: an answer that nobody waits for would be left lying. */
const PUSH = `
if redis.call("EXISTS", KEYS[1]) == 0 then return 0 end
redis.call("RPUSH", KEYS[2], ARGV[1])
return redis.call("EXPIRE", KEYS[2], ARGV[2])`;

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

/** Sends an answer to whoever handed the study out. */
async function sendAnswer(redis: Redis, study: string, text: string): Promise<void> {
  await redis.eval(PUSH, 2, studyKey(study), answersKey(study), text, STUDY_SECONDS);
}

/** A task as the queue holds it, checked. One that is not as it must be is not tried again. */
export function readTask(data: unknown): Task {
  const task = TASK.safeParse(data);
  if (!task.success) throw new UnrecoverableError("this is no task of gambrel");
  return task.data;
}

/** Fetches what a task needs, and checks it. */
async function fetchTask(redis: Redis, name: string, task: Task): Promise<ThreadTask> {
  const { study, variant, first, count } = task;
  const [about, plan] = await redis.hmget(studyKey(study), ABOUT, String(variant));
  if (about == null || plan == null) {
    throw new UnrecoverableError("the study is no longer in the queue: whoever handed it out has gone");
  }
  const checked = {
    about: STUDY_ABOUT.safeParse(parseExactJson(about)),
    plan: PLAN_SHAPE.safeParse(parseExactJson(plan)),
  };
  if (!checked.about.success || !checked.plan.success)
    throw new UnrecoverableError("the study in the queue cannot be read");
  return { task: name, study, about: checked.about.data, plan: checked.plan.data, batch: { variant, first, count } };
}
