import { UnrecoverableError } from "bullmq";
import type { Redis } from "ioredis";
import { parseExactJson } from "../wire/index.ts";
import { ABOUT, studyKey } from "./names.ts";
import { PLAN_SHAPE, STUDY_ABOUT, TASK, type Task } from "./payloads.ts";
import type { ThreadTask } from "./queueThread.ts";

/** A task as the queue holds it, checked. One that is not as it must be is not tried again. */
export function readTask(data: unknown): Task {
  const task = TASK.safeParse(data);
  if (!task.success) throw new UnrecoverableError("this is no task of gambrel");
  return task.data;
}

/** Fetches what a task needs, and checks it. */
export async function fetchTask(redis: Redis, name: string, task: Task): Promise<ThreadTask> {
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
