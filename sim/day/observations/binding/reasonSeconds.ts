import type { BoundSeconds, DayRecord, PathCell } from "../../engine/index.ts";

/**
 * What the line waited for up to the end of the day's work: up to the last work on a head; up to the last head out in a run whose
 * supply never ends. Null without a binding path.
 */
export function reasonsOf({ binding }: DayRecord): BoundSeconds[] | null {
  return binding === null ? null : (binding.work ?? binding.day);
}

/** The time that it adds up to, seconds. */
export function accountedSeconds(day: DayRecord): number {
  return day.binding?.work
    ? day.workFinishSeconds - day.watchedFromSeconds
    : day.finishSeconds - day.watchedFromSeconds;
}

/** Seconds for which the line waited for what `wanted` says; null without a binding path. */
export function reasonSeconds(day: DayRecord, wanted: (cell: PathCell) => boolean): number | null {
  const reasons = reasonsOf(day);
  if (reasons === null) return null;
  return reasons.reduce((sum, cell) => (wanted(cell) ? sum + cell.seconds : sum), 0);
}
