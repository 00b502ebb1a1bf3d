import {
  costsMoreThanPlanned,
  type Fault,
  type Plan,
  plannedStopSeconds,
  type StopFit,
  staggerWords,
  stopGapWords,
} from "../../asked/plan/index.ts";
import { type DayRecord, runDay } from "../../day/engine/index.ts";
import { compileLine } from "../../day/line/index.ts";
import { measurer } from "../../day/observations/index.ts";
import { estimate } from "../../maths/statistics/index.ts";
import { does } from "../../text/kinds/index.ts";
import { formatMinutes } from "../../text/units/index.ts";
import { harmOf, harmResponses } from "../results/index.ts";

const DAYS = 5;
/** A proposal that is told ends work sooner by this at least, seconds. */
export const MIN_GAIN = 120;

/** A plan with its breaks laid otherwise, or with more places, that mean times recommend. */
export interface StopProposal {
  words: string;
  plan: Plan;
}

/** What mean times recommend; whether it is true is for simulated days to say. */
export function stopProposals(plan: Plan, { stagger, places }: StopFit): StopProposal[] {
  return [
    ...(stagger === null
      ? []
      : [{ words: staggerWords(stagger.breaks), plan: { ...plan, day: { ...plan.day, breaks: stagger.breaks } } }]),
    ...(places === null
      ? []
      : [
          {
            words: `"${places.key}": ${places.places} at '${places.stage}' instead of ${places.now}`,
            plan: withPlaces(plan, places),
          },
        ]),
  ];
}

/**
 * Planned stops that cost more than their planned length, with what would cost less. The estimate by mean times finds where to look; what is
 * told was simulated, on five days with the same random numbers: the cost against days without stops, and each proposal, which is
 * left out where it gains nothing beyond luck or does harm. `fit` is that of the plan. Null where there is nothing to tell. Some seconds at most.
 */
export function stopWarning(plan: Plan, fit: StopFit | null): Fault | null {
  if (fit === null || plan.supply.kind === "saturated" || !costsMoreThanPlanned(fit.lostSeconds, fit.plannedSeconds))
    return null;
  const today = daysOf(plan);
  const without = today && daysOf({ ...plan, day: { ...plan.day, breaks: [] } });
  if (today === null || without === null) return null;
  const lost = today.ends.map((end, day) => end - without.ends[day]!);
  const lostSeconds = meanOf(lost);
  const plannedSeconds = plannedStopSeconds(plan, Math.max(...today.ends));
  if (!costsMoreThanPlanned(lostSeconds, plannedSeconds)) return null;
  const better = stopProposals(plan, fit).flatMap((proposal) => {
    const days = daysOf(proposal.plan);
    if (days === null || harmOf(plan, today.values, days.values) !== null) return [];
    const gain = estimate(
      today.ends.map((end, day) => end - days.ends[day]!),
      0.95,
    )!;
    if (gain.mean < MIN_GAIN || gain.low! <= 0) return [];
    return [`${proposal.words} would end work ${formatMinutes(gain.mean)} sooner`];
  });
  if (better.length === 0) return null;
  const [worst] = fit.gaps;
  const why = worst === undefined ? "" : `: ${stopGapWords(worst)}`;
  const found = `on ${DAYS} simulated days the planned stops put off the end of work by ${formatMinutes(lostSeconds)}, though nobody stands longer than ${formatMinutes(plannedSeconds)} by plan${why}`;
  return { path: "day.breaks", found, allowed: "", remedy: better.join("; ") };
}

interface Days {
  ends: number[];
  values: Record<string, (number | null)[]>;
}

/** Null where a day does not end by itself. */
function daysOf(plan: Plan): Days | null {
  const line = compileLine(plan);
  const days: DayRecord[] = [];
  for (let replication = 0; replication < DAYS; replication++) {
    const day = runDay(line, { seed: "planned stops", replication });
    if (day.status !== "finished") return null;
    days.push(day);
  }
  return { ends: days.map(({ workFinishSeconds }) => workFinishSeconds), values: harmValues(plan, days) };
}

/** What `harmOf` goes by, of so many days. */
export function harmValues(plan: Plan, days: readonly DayRecord[]): Record<string, (number | null)[]> {
  const keys = harmResponses(plan);
  const rows = days.map(measurer(plan, keys));
  return Object.fromEntries(keys.map((key, column) => [key, rows.map((row) => row[column]!)]));
}

function withPlaces(plan: Plan, { stage, key, places }: NonNullable<StopFit["places"]>): Plan {
  const changed = <Place extends { name: string }>(place: Place): Place =>
    place.name === stage ? { ...place, [key]: places } : place;
  const line = plan.line.map((each) =>
    does(each, "carry stations") ? { ...changed(each), stations: each.stations.map(changed) } : changed(each),
  );
  return { ...plan, line };
}

function meanOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
}
