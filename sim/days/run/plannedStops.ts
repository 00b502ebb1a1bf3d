import { costsMoreThanPlanned, type Plan, plannedStopSeconds, stopFit, stopGapWords } from "../../asked/plan/index.ts";
import { type DayOptions, type DayRecord, runDay } from "../../day/engine/index.ts";
import { compileLine } from "../../day/line/index.ts";
import { capital, formatMinutes } from "../../text/units/index.ts";
import { harmOf, type PlannedStopCost } from "../results/index.ts";
import { harmValues, MIN_GAIN, stopProposals } from "./stopAdvice.ts";

/**
 * What the planned stops of a day cost: the day once more without breaks and pauses, with the same random numbers. The
 * binding path alone would not do: it tells where the line waited, but time that a stop took from the slack elsewhere, or
 * that other work made up for, is on no path. Null without planned stops, and where one of the days did not end by itself.
 */
export function plannedStopCost(plan: Plan, day: DayRecord, options: DayOptions): PlannedStopCost | null {
  if (plan.day.breaks.length === 0 || day.status !== "finished" || plan.supply.kind === "saturated") return null;
  const bare = { ...plan, day: { ...plan.day, breaks: [] } };
  const without = runDay(compileLine(bare), { ...options, binding: false, traces: "none" });
  if (without.status !== "finished") return null;
  const parts = day.binding?.work ?? day.binding?.day ?? [];
  return {
    lostSeconds: day.workFinishSeconds - without.workFinishSeconds,
    plannedSeconds: plannedStopSeconds(plan, day.workFinishSeconds),
    lostHeads: Math.max(0, headsOut(without) - headsOut(day)),
    where: parts
      .filter(({ cause }) => cause === "planned stop")
      .map(({ stage, seconds }) => ({ stage, seconds }))
      .sort((a, b) => b.seconds - a.seconds),
  };
}

/** All that left the line, by whatever way. */
function headsOut({ heads }: DayRecord): number {
  return Object.values(heads.out).reduce((sum, count) => sum + count, 0);
}

const MAX_STAGES = 4;

/** The cost in sentences; where it is far above the plan also where the line waited, why, and what would fit. */
export function plannedStopWords(plan: Plan, cost: PlannedStopCost, day: DayRecord, options: DayOptions): string[] {
  const { lostSeconds, plannedSeconds, lostHeads } = cost;
  if (plannedSeconds === 0) return [];
  if (lostHeads > 0) {
    return [
      `Planned stops cost ${lostHeads} heads: so many fewer were worked than on the same day without them (longest stop of anybody by plan: ${formatMinutes(plannedSeconds)}).`,
    ];
  }
  const lost =
    lostSeconds > 30 ? `put off the end of work by ${formatMinutes(lostSeconds)}` : "did not put off the end of work";
  const sum = `Planned stops ${lost}; by plan nobody stands longer than ${formatMinutes(plannedSeconds)}.`;
  return costsMoreThanPlanned(lostSeconds, plannedSeconds)
    ? [sum, ...whereWords(cost), ...whyWords(plan, day, options)]
    : [sum];
}

function whereWords({ where }: PlannedStopCost): string[] {
  const told = where.slice(0, MAX_STAGES).filter(({ seconds }) => seconds >= 60);
  if (told.length === 0) return [];
  return [
    `The line waited for planned stops at ${told.map(({ stage, seconds }) => `'${stage}' for ${formatMinutes(seconds)}`).join(", ")}.`,
  ];
}

/** Why, and what would have ended this very day sooner. */
function whyWords(plan: Plan, day: DayRecord, options: DayOptions): string[] {
  const fit = stopFit(plan);
  if (fit === null) return [];
  const [worst] = fit.gaps;
  const why = worst === undefined ? [] : [`Reason: ${stopGapWords(worst)}.`];
  const better = stopProposals(plan, fit).flatMap((proposal) => {
    const other = runDay(compileLine(proposal.plan), { ...options, binding: false, traces: "none" });
    const gain = day.workFinishSeconds - other.workFinishSeconds;
    if (
      other.status !== "finished" ||
      gain < MIN_GAIN ||
      harmOf(plan, harmValues(plan, [day]), harmValues(plan, [other])) !== null
    )
      return [];
    return [
      `${capital(proposal.words)} would have ended this day ${formatMinutes(gain)} sooner; \`gambrel why\` tries it on more days.`,
    ];
  });
  return [...why, ...better];
}
