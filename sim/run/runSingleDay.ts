import type { Plan } from "../plan/index.ts";
import type { StudyResults } from "../results/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import { DaySimulator } from "./daySimulator.ts";
import type { TraceKind } from "./dayTasks.ts";
import { singleDayStudy } from "./singleDayStudy.ts";

/**
 * Simulates one day of a plan, the given replication of its seed, with the usual responses; the day itself has the
 * rest. One day has no interval (`halfWidth` is null throughout): it shows how a day goes, not how days are.
 */
export function runSingleDay(
  plan: Plan,
  seed: string,
  traces: TraceKind,
  provenance: Provenance,
  replication = 0,
): StudyResults {
  const simulator = new DaySimulator([plan], seed, false);
  const outcome = simulator.simulate({ variant: 0, replication, traces, keepDay: true });
  return assembleResults(singleDayStudy(plan, seed), [[outcome]], provenance);
}
