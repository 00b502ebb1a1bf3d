import { formatDecimals } from "../../sim/text/units/index.ts";
import type { DayRecord, StudyResults } from "../contract.ts";
import { clockAt } from "../frame/index.ts";

/** When work ended, and all the overtime of the day: after the last shift's end, cleaning included. */
export function overtimeWords({ plan }: Pick<StudyResults, "plan">, day: DayRecord): string {
  const clock = (seconds: number) => clockAt(seconds, day.startClockSeconds);
  const work = `Work on the line ended at ${clock(day.workFinishSeconds)}`;
  // A run of an earlier version did not keep how long cleaning takes.
  const cleaning = day.workFinishSeconds > 0 ? (plan.cleaningSeconds ?? 0) : 0;
  const sections = (day.cleaning ?? []).map(({ toSeconds }) => toSeconds);
  const end = Math.max(day.workFinishSeconds + cleaning, ...sections);
  const ended = end > day.workFinishSeconds ? `${work} and cleaning at ${clock(end)}` : work;
  const over = end - day.shiftEndSeconds;
  return `${ended}, ${over > 0 ? `${minutes(over)} after the end of the last shift` : "within the shifts"}.`;
}

function minutes(seconds: number): string {
  return seconds < 60 ? "less than 1 min" : `${formatDecimals(seconds / 60, 0)} min`;
}
