import type { Plan } from "../../asked/plan/index.ts";
import { advance, type DayOptions, runDay, startDay } from "../../day/engine/index.ts";
import { type CompiledLine, compileLine } from "../../day/line/index.ts";
import { measure } from "../../day/observations/index.ts";
import type { CapacityResults, StudyResults } from "../results/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import { capacityOf } from "./capacityOf.ts";
import { MAX_EVENTS } from "./ceilings.ts";
import { plannedStopCost, plannedStopWords } from "./plannedStops.ts";
import { singleDayStudy } from "./singleDayStudy.ts";
import { variantDays } from "./variantDays.ts";

/** `TraceKind` without the one that speaks of several variants. */
type DayTraces = "none" | "binned" | "exact";

const MINUTE = 60;

/** So little below a time that nothing lies between (half a unit in the last place, rounded down). */
const JUST_BEFORE = 1 - 2 ** -53;

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
 * capacity run, and what the line can do is estimated from its course. `traces`: "binned" for what pictures need, "none", or
 * "exact". Throws `DayTooLong` when the day has more events than `mostEvents`. Example:
 *
 *     const results = runSingleDay(plan, "seed", "binned", { gambrel: "my program 1.0", command: "" });
 *     results.variants[0].estimates.finish.mean; // end of work, seconds after midnight
 */
export function runSingleDay(plan: Plan, seed: string, traces: DayTraces, options: SingleDayOptions): StudyResults {
  const { replication = 0, check = false, mostEvents = MAX_EVENTS } = options;
  const line = compileLine(plan);
  const day = runDay(line, { seed, replication, traces, check, mostEvents, binding: true, killStops: true });
  const study = singleDayStudy(plan, seed);
  const results = assembleResults(study, [variantDays([{ values: measure(day, plan), day }])], options);
  const { confidence } = study;
  const [variant] = results.variants;
  const plannedStops = plannedStopCost(plan, day, { seed, replication, mostEvents });
  const notes =
    plannedStops === null ? [] : plannedStopWords(plan, plannedStops, day, { seed, replication, mostEvents });
  const told = { ...variant!, plannedStops, dayNotes: [...(variant!.dayNotes ?? []), ...notes] };
  return { ...results, variants: [told], capacity: capacityRun(plan, line, { seed, replication }, confidence) };
}

function capacityRun(plan: Plan, line: CompiledLine, day: DayOptions, confidence: number): CapacityResults | null {
  if (plan.supply.kind !== "saturated") return null;
  return capacityOf(exitsPerMinute(line, day), confidence, plan.day.breaks);
}

/**
 * Carcasses that left the line in each whole minute of a day of a line whose first stage never runs out of heads; the
 * minutes after the last head was taken are left out, since the line runs empty then. A carcass on the stroke of a
 * minute counts to the one that begins. The day is played anew, minute by minute: nothing of its course is kept.
 */
export function exitsPerMinute(line: CompiledLine, options: DayOptions): number[] {
  const day = startDay(line, options);
  const carcasses: number[] = [];
  const taken: number[] = [];
  let status: ReturnType<typeof advance> = "running";
  for (let end = MINUTE; status === "running" && end <= line.ceilingSeconds; end += MINUTE) {
    status = advance(day, end * JUST_BEFORE);
    carcasses.push(day.out[0]!);
    taken.push(day.hung);
  }
  if (status === "running") advance(day, line.ceilingSeconds);
  const whole = taken.indexOf(day.hung);
  return carcasses.slice(0, whole === -1 ? undefined : whole).map((out, minute) => out - (carcasses[minute - 1] ?? 0));
}
