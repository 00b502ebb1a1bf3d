import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";

/**
 * Seconds in which the plant was at work: all shifts up to the end of the last work, and overtime after the last one.
 * Breaks count, gaps between shifts do not. What a warm-up cut off is left out. 0 when nothing was worked on.
 */
export function workingSeconds(day: DayRecord, plan: Plan): number {
  const within = (from: number, to: number) =>
    Math.max(0, Math.min(to, day.workFinishSeconds) - Math.max(from, day.watchedFromSeconds));
  const shifts = plan.day.shifts.reduce((sum, shift) => sum + within(shift.fromSeconds, shift.toSeconds), 0);
  return shifts + within(day.shiftEndSeconds, Number.POSITIVE_INFINITY);
}

/** Seconds from the first shift's start to the last carcass out: as long as a dwell stage, the chiller above all, is kept running. */
export function openSeconds(day: DayRecord, plan: Plan): number {
  const start = Math.max(plan.day.shifts[0]?.fromSeconds ?? 0, day.watchedFromSeconds);
  return Math.max(0, day.finishSeconds - start);
}

/**
 * When cleaning ends, of what is cleaned after the last work and of the sections that are cleaned one by one; null without
 * cleaning, or on a day without work.
 */
export function cleaningEndSeconds(day: DayRecord, plan: Plan): number | null {
  if (plan.day.cleaning === null || day.workFinishSeconds === 0) return null;
  return Math.max(day.workFinishSeconds + plan.day.cleaning.seconds, sectionsCleanSeconds(day));
}

/** When the last section is clean; 0 where none is cleaned by itself. */
export function sectionsCleanSeconds({ cleaning = [] }: DayRecord): number {
  return Math.max(0, ...cleaning.map(({ toSeconds }) => toSeconds));
}

/** Seconds in which something is cleaned. */
export function cleaningSeconds(day: DayRecord, plan: Plan): number {
  const { workFinishSeconds, cleaning = [] } = day;
  if (plan.day.cleaning === null || workFinishSeconds === 0) return 0;
  if (cleaning.length === 0) return plan.day.cleaning.seconds;
  const whole = { fromSeconds: workFinishSeconds, toSeconds: workFinishSeconds + plan.day.cleaning.seconds };
  let until = 0;
  let seconds = 0;
  for (const each of [...cleaning, whole].sort((a, b) => a.fromSeconds - b.fromSeconds)) {
    seconds += Math.max(0, each.toSeconds - Math.max(until, each.fromSeconds));
    until = Math.max(until, each.toSeconds);
  }
  return seconds;
}
