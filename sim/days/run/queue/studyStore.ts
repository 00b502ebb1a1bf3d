import { randomUUID } from "node:crypto";
import type { Redis } from "ioredis";
import type { DaySource } from "../index.ts";
import { exactJson } from "../wire/index.ts";
import { ABOUT, answersKey, STUDY_SECONDS, studyKey } from "./names.ts";

const PLANS_AT_ONCE = 200;

/** A study as it lies in Redis while it is being run: workers fetch it, and the plan of the variant they are to run. */
export class StudyStore {
  readonly id = randomUUID();
  readonly #redis: Redis;
  readonly #source: DaySource;

  constructor(redis: Redis, source: DaySource) {
    this.#redis = redis;
    this.#source = source;
  }

  /** Lays it there, and does so again should it have been lost. */
  async ensure(): Promise<void> {
    if ((await this.#redis.expire(studyKey(this.id), STUDY_SECONDS)) === 1) return;
    const { plans, ...about } = this.#source;
    for (let from = 0; from < plans.length; from += PLANS_AT_ONCE) {
      const fields = plans.slice(from, from + PLANS_AT_ONCE).flatMap((plan, i) => [String(from + i), exactJson(plan)]);
      await this.#redis.hset(studyKey(this.id), ...fields);
      await this.#redis.expire(studyKey(this.id), STUDY_SECONDS);
    }
    // Last: a worker that finds it finds everything.
    await this.#redis.hset(studyKey(this.id), ABOUT, exactJson(about));
  }

  /** Answers to this study that wait, the oldest first; waits for one for so many seconds. Connection of its own. */
  async answer(waiting: Redis, seconds: number): Promise<string | null> {
    return (await waiting.blpop(answersKey(this.id), seconds))?.[1] ?? null;
  }

  async remove(): Promise<void> {
    await this.#redis.del(studyKey(this.id), answersKey(this.id));
  }
}
