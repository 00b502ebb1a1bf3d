import { runDay } from "../engine/index.ts";
import { compileLine } from "../line/index.ts";
import { measure } from "../observations/index.ts";
import type { Plan } from "../plan/index.ts";
import type { StudyResults } from "../results/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import type { TraceKind } from "./daySource.ts";
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
  const day = runDay(compileLine(plan), { seed, replication, traces, check });
  return assembleResults(singleDayStudy(plan, seed), [[{ values: measure(day, plan), day }]], options);
}
