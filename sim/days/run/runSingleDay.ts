import type { Plan } from "../../asked/plan/index.ts";
import { type DayOptions, runDay } from "../../day/engine/index.ts";
import { type CompiledLine, compileLine } from "../../day/line/index.ts";
import { measure } from "../../day/observations/index.ts";
import type { CapacityResults, StudyResults } from "../results/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import { capacityOf } from "./capacityOf.ts";
import { MOST_EVENTS } from "./ceilings.ts";
import type { TraceKind } from "./daySource.ts";
import { exitsPerMinute } from "./exitsPerMinute.ts";
import { plannedStopCost, plannedStopWords } from "./plannedStops.ts";
import { singleDayStudy } from "./singleDayStudy.ts";

export interface SingleDayOptions extends Provenance {
  /** Which day of the seed, counted from 0; 0 when left out. */
  replication?: number;
  /** Conservation of heads checked at every event (slow). */
  check?: boolean;
  /** A day with more events fails; 100 million when left out. */
  mostEvents?: number;
}

/**
 * Simulates one day of a plan with the usual responses; the day itself has the rest. One day has no interval
 * (`halfWidth` is null throughout): it shows how a day goes, not how days are. Where the supply never ends the day is a
 * capacity run, and what the line can do is estimated from its course.
 */
export function runSingleDay(plan: Plan, seed: string, traces: TraceKind, options: SingleDayOptions): StudyResults {
  const { replication = 0, check = false, mostEvents = MOST_EVENTS } = options;
  const line = compileLine(plan);
  const day = runDay(line, { seed, replication, traces, check, mostEvents, binding: true, killStops: true });
  const study = singleDayStudy(plan, seed);
  const results = assembleResults(study, [[{ values: measure(day, plan), day }]], options);
  const { confidence } = study;
  const [variant] = results.variants;
  const plannedStops = plannedStopCost(plan, day, { seed, replication, mostEvents });
  const notes = plannedStops === null ? [] : plannedStopWords(plan, plannedStops);
  const told = { ...variant!, plannedStops, dayNotes: [...(variant!.dayNotes ?? []), ...notes] };
  return { ...results, variants: [told], capacity: capacityRun(plan, line, { seed, replication }, confidence) };
}

function capacityRun(plan: Plan, line: CompiledLine, day: DayOptions, confidence: number): CapacityResults | null {
  if (plan.supply.kind !== "saturated") return null;
  return capacityOf(exitsPerMinute(line, day), confidence, plan.day.breaks);
}
