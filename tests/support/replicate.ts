import type { Plan } from "../../sim/asked/plan/index.ts";
import { type DayOptions, type DayRecord, STATES, type State } from "../../sim/day/engine/index.ts";
import type { Replications } from "./replicationThread.ts";
import { stayingThreads, THREADS } from "./stayingThreads.ts";

const pool = stayingThreads<Replications, DayRecord[]>("replicationThread");

/**
 * Independent days of one plan, in worker threads; `seed` is the name of the check, so that no seed is chosen for its
 * outcome. Tallies come without their bins.
 */
export async function replicate(
  plan: Plan,
  seed: string,
  { replications = 20, ...rest }: Partial<DayOptions> & { replications?: number } = {},
): Promise<DayRecord[]> {
  const size = Math.ceil(replications / (THREADS * 5));
  const tasks: Promise<DayRecord[]>[] = [];
  for (let from = 0; from < replications; from += size) {
    const to = Math.min(from + size, replications);
    tasks.push(pool.run({ plan, options: { seed, ...rest }, from, to }));
  }
  const days = (await Promise.all(tasks)).flat();
  const wrong = days.find((day) => day.status !== "finished");
  if (wrong) throw new Error(`${seed}: replication ${wrong.replication} ended as ${wrong.status}`);
  return days;
}

export function watchedSeconds(day: DayRecord): number {
  return day.finishSeconds - day.watchedFromSeconds;
}

/** Carcasses per second. */
export function throughput(day: DayRecord): number {
  return day.heads.out.carcass! / watchedSeconds(day);
}

/** Share of its time that one position of the stage spends in the state. */
export function stateShare(day: DayRecord, stage: number, state: State): number {
  const { stateSeconds, positions } = day.stages[stage]!;
  return stateSeconds[STATES.indexOf(state)]! / (positions * watchedSeconds(day));
}

/** Heads on the line, mean over time. */
export function meanPresent(day: DayRecord): number {
  return day.sections.reduce((sum, section) => sum + section.wip.mean, 0);
}

/** Share of the watched heads outside a limit. */
export function shareBeyond(day: DayRecord, limit: number): number {
  return day.limits[limit]!.beyond / day.limits[limit]!.tally.count;
}
