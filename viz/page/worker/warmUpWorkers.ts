import type { DaySource } from "../../../sim/days/run/index.ts";
import type { WorkerPool } from "./workerPool.ts";

/** So many days after the first twenty a browser has translated the engine as well as it ever will. */
const DAYS_EACH = 20;
/** Days of a large plant are long enough to be translated within the first twenty. */
const MAX_MILLISECONDS = 1500;

/**
 * Simulates days that nobody asked for, when there is nothing else to do: without them the first two controls that are
 * moved would take twice as long as those after them. Rejected with `TaskCancelled` once they are not `wanted` any more, or take
 * too long.
 */
export async function warmUpWorkers(
  pool: WorkerPool,
  source: DaySource,
  wanted: () => boolean,
  now = () => performance.now(),
): Promise<void> {
  const number = pool.newStudyNumber();
  const end = now() + MAX_MILLISECONDS;
  const goesOn = () => wanted() && now() < end;
  const days = Array.from({ length: DAYS_EACH * pool.size }, (_, day) => ({ variant: 0, first: 1 + day, count: 1 }));
  const simulate = (batch: (typeof days)[number]) =>
    pool.ask<"days">({ kind: "days", number, source, batch }, { wanted: goesOn, urgency: -1 });
  await Promise.all(days.map(simulate));
}
