import type { Plan } from "../plan/index.ts";
import type { StudyResults } from "../results/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import { DaySimulator } from "./daySimulator.ts";
import type { TraceKind } from "./dayTasks.ts";
import { singleDayStudy } from "./singleDayStudy.ts";

export interface SingleDayOptions extends Provenance {
  /** Which day of the seed, counted from 0; 0 when left out. */
  replication?: number;
  /** Conservation of heads checked at every event (slow). */
  check?: boolean;
}

/**
 * Simulates one day of a plan with the usual responses; the day itself has the rest. One day has no interval
 * (`halfWidth` is null throughout): it shows how a day goes, not how days are.
 */
export function runSingleDay(plan: Plan, seed: string, traces: TraceKind, options: SingleDayOptions): StudyResults {
  const { replication = 0, check = false } = options;
  const simulator = new DaySimulator([plan], seed, check);
  const outcome = simulator.simulate({ variant: 0, replication, traces, keepDay: true });
  return assembleResults(singleDayStudy(plan, seed), [[outcome]], options);
}
