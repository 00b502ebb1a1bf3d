import type { Batch, BatchResult, FailedDay } from "../index.ts";
import type { Answer } from "./payloads.ts";

/** The tasks that are handed out and not answered yet, by the name of their job. */
export class Outstanding {
  readonly #batches = new Map<string, Batch>();

  add(name: string, batch: Batch): void {
    this.#batches.set(name, batch);
  }

  get names(): string[] {
    return [...this.#batches.keys()];
  }

  get size(): number {
    return this.#batches.size;
  }

  batch(name: string): Batch {
    return this.#batches.get(name)!;
  }

  /**
   * What an answer says of its task, which is settled by it; null when the task was answered before or is none of ours.
   * Days of other tasks in it are passed over; days of the task that are not in it have failed.
   */
  settle(answer: Exclude<Answer, { refused: string }>): BatchResult | null {
    const batch = this.#batches.get(answer.task);
    if (batch === undefined) return null;
    this.#batches.delete(answer.task);
    if ("error" in answer) return { days: [], failed: failedDays(batch, () => true, answer.error) };
    const isOurs = ({ variant, replication }: { variant: number; replication: number }): boolean =>
      variant === batch.variant && replication >= batch.first && replication < batch.first + batch.count;
    const days = answer.days.filter(isOurs);
    const failed = answer.failed.filter(isOurs);
    const told = new Set([...days, ...failed].map(({ replication }) => replication));
    const untold = failedDays(batch, (replication) => !told.has(replication), "a worker did not say what became of it");
    return { days, failed: [...failed, ...untold] };
  }
}

function failedDays(
  { variant, first, count }: Batch,
  which: (replication: number) => boolean,
  message: string,
): FailedDay[] {
  return Array.from({ length: count }, (_, day) => first + day)
    .filter(which)
    .map((replication) => ({ variant, replication, message }));
}
