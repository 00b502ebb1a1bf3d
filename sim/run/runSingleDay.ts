import { runDay } from "../engine/index.ts";
import { type CompiledLine, compileLine } from "../line/index.ts";
import { measure } from "../observations/index.ts";
import type { Plan } from "../plan/index.ts";
import type { CapacityResults, StudyResults } from "../results/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import { capacityOf } from "./capacityOf.ts";
import type { TraceKind } from "./daySource.ts";
import { exitsPerMinute } from "./exitsPerMinute.ts";
import { singleDayStudy } from "./singleDayStudy.ts";

export interface SingleDayOptions extends Provenance {
  /** Which day of the seed, counted from 0; 0 when left out. */
  replication?: number;
  /** Conservation of heads checked at every event (slow). */
  check?: boolean;
}

/**
 * Simulates one day of a plan with the usual responses; the day itself has the rest. One day has no interval
 * (`halfWidth` is null throughout): it shows how a day goes, not how days are. Where the supply never ends the day is a
 * capacity run, and what the line can do is estimated from its course.
 */
export function runSingleDay(plan: Plan, seed: string, traces: TraceKind, options: SingleDayOptions): StudyResults {
  const { replication = 0, check = false } = options;
  const line = compileLine(plan);
  const day = runDay(line, { seed, replication, traces, check });
  const study = singleDayStudy(plan, seed);
  const results = assembleResults(study, [[{ values: measure(day, plan), day }]], options);
  const { confidence } = study;
  return { ...results, capacity: capacityRun(plan, line, { seed, replication, confidence }) };
}

/** The same day once more with every step of its course, which the caller may not have asked for. */
function capacityRun(
  plan: Plan,
  line: CompiledLine,
  { seed, replication, confidence }: { seed: string; replication: number; confidence: number },
): CapacityResults | null {
  if (plan.supply.kind !== "saturated") return null;
  const { traces, perHead } = runDay(line, { seed, replication, traces: "exact", perHead: true });
  // After the last head was taken the line runs empty, which says nothing of what it can do.
  const supplied = perHead!.arrived.reduce((latest, at) => Math.max(latest, at), 0);
  return capacityOf(exitsPerMinute(traces!.out, supplied), confidence, plan.day.breaks);
}
