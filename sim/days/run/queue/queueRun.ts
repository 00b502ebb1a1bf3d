import type { Queue } from "bullmq";
import type { Redis } from "ioredis";
import { z } from "zod";
import { type Batch, type BatchResult, type DaySource, shownAddress } from "../index.ts";
import { type MakerMark, parseExactJson } from "../wire/index.ts";
import { Outstanding } from "./outstanding.ts";
import { type Answer, answerShape, type Task } from "./payloads.ts";
import type { StudyStore } from "./studyStore.ts";

const NAMED = z.looseObject({ task: z.string() });

const JOBS_AT_ONCE = 500;

const WAIT_SECONDS = 1;

/** After so many waits without an answer, a look whether everything is in order. */
const WAITS_BETWEEN_LOOKS = 5;

const REFRESH_MS = 60_000;

export interface QueueRunParts {
  queue: Queue;
  /** A connection that may wait for answers. */
  waiting: Redis;
  store: StudyStore;
  source: DaySource;
  maker: MakerMark;
  address: string;
  say: (words: string) => void;
}

/** The tasks of one study: handed out, their answers gathered, what nobody took taken back. */
export class QueueRun {
  readonly #parts: QueueRunParts;
  readonly #outstanding = new Outstanding();
  readonly #read: (text: string) => Answer | null;
  readonly #said = new Set<string>();
  #tasks = 0;

  constructor(parts: QueueRunParts) {
    this.#parts = parts;
    this.#read = answerReader(parts.source);
  }

  async handOut(batches: readonly Batch[]): Promise<void> {
    const names = batches.map((batch) => {
      this.#tasks += 1;
      const name = `${this.#parts.store.id}-${this.#tasks}`;
      this.#outstanding.add(name, batch);
      return name;
    });
    await this.#addJobs(names);
  }

  /** Gives each answer to `done` until every task has one, or the signal is aborted. */
  async gather(done: (result: BatchResult) => void, signal?: AbortSignal): Promise<void> {
    const { store, waiting } = this.#parts;
    let idle = 0;
    let refreshed = performance.now();
    while (this.#outstanding.size > 0 && !signal?.aborted) {
      const text = await store.answer(waiting, WAIT_SECONDS);
      idle = text === null ? idle + 1 : 0;
      if (text !== null) this.#take(text, done);
      const look = idle > 0 && idle % WAITS_BETWEEN_LOOKS === 0;
      if (!look && performance.now() - refreshed < REFRESH_MS) continue;
      refreshed = performance.now();
      await store.ensure();
      if (look) await this.#lookAround();
    }
  }

  /** Takes what is still in the queue out of it; a task that a worker has in hand goes when the worker is done. */
  async takeBack(): Promise<void> {
    await inParts(this.#outstanding.names, async (names) => {
      await Promise.all(names.map((name) => this.#parts.queue.remove(name)));
    });
  }

  #take(text: string, done: (result: BatchResult) => void): void {
    const answer = this.#read(text);
    if (answer === null) this.#sayOnce("An answer that cannot be read was passed over.");
    else if ("refused" in answer) this.#sayOnce(answer.refused);
    else {
      const result = this.#outstanding.settle(answer);
      if (result !== null) done(result);
    }
  }

  /** Is anybody there? Are the tasks? What was lost (a queue that began anew, empty) is handed out again. */
  async #lookAround(): Promise<void> {
    const { queue, address } = this.#parts;
    // Some hosted servers do not let their clients be counted.
    if ((await queue.getWorkersCount().catch(() => null)) === 0) {
      this.#sayOnce(`No worker is there yet; start one or more: gambrel worker --queue ${shownAddress(address)}`);
    }
    await inParts(this.#outstanding.names, async (names) => {
      const states = await Promise.all(names.map((name) => queue.getJobState(name)));
      await this.#addJobs(names.filter((_, index) => states[index] === "unknown"));
    });
  }

  async #addJobs(names: readonly string[]): Promise<void> {
    const { queue, store, maker } = this.#parts;
    await inParts(names, async (part) => {
      await queue.addBulk(
        part.map((name) => {
          const { variant, first, count } = this.#outstanding.batch(name);
          const data: Task = { maker, study: store.id, variant, first, count };
          return { name: "days", data, opts: { jobId: name, removeOnComplete: true, removeOnFail: true } };
        }),
      );
    });
  }

  #sayOnce(words: string): void {
    if (this.#said.has(words)) return;
    this.#said.add(words);
    this.#parts.say(words);
  }
}

async function inParts<Item>(all: readonly Item[], work: (part: Item[]) => Promise<void>): Promise<void> {
  for (let from = 0; from < all.length; from += JOBS_AT_ONCE) await work(all.slice(from, from + JOBS_AT_ONCE));
}

/** Reads what workers send; of an answer that is not as it must be, what is left is which task it was about, if that. */
export function answerReader(source: DaySource): (text: string) => Answer | null {
  const shape = answerShape(source);
  return (text) => {
    const json = parsed(text);
    const whole = shape.safeParse(json);
    if (whole.success) return whole.data;
    const named = NAMED.safeParse(json);
    return named.success ? { task: named.data.task, error: "a worker's answer cannot be read" } : null;
  };
}

function parsed(text: string): unknown {
  try {
    return parseExactJson(text);
  } catch {
    return undefined;
  }
}
