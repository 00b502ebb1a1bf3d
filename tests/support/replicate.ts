import { type DayOptions, type DayRecord, runDay, STATES, type State } from "../../sim/engine/index.ts";
import { compileLine } from "../../sim/line/index.ts";
import type { Plan } from "../../sim/plan/index.ts";

/** Independent days of one plan; `seed` is the name of the check, so that no seed is chosen for its outcome. */
export function replicate(
  plan: Plan,
  seed: string,
  options: Partial<DayOptions> & { replications?: number } = {},
): DayRecord[] {
  const { replications = 20, ...rest } = options;
  const line = compileLine(plan);
  return Array.from({ length: replications }, (_, replication) => {
    const day = runDay(line, { seed, replication, ...rest });
    if (day.status !== "finished") throw new Error(`${seed}: replication ${replication} ended as ${day.status}`);
    return day;
  });
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
