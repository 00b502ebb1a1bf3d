import { type DayCourse, lastAtOrBefore, stepAt } from "../../../sim/day/course/index.ts";
import { formatClock, formatDecimals, formatDuration } from "../../../sim/text/units/index.ts";

/** List of "done" in the course's counts. */
const DONE = 2;

export interface RunningDifference {
  /** Carcasses done in the variant less those in the base. */
  heads: number;
  /** How much earlier (positive) the variant had as many as the base has now, or the other way about; seconds. */
  seconds: number;
  base: number;
  variant: number;
  /** Clock time at which the last work of each line ended, seconds after midnight, once both have; null before. */
  ends: { base: number; variant: number } | null;
}

/**
 * How far the variant is ahead of the base at `seconds`. In time: the one behind has a count now that the one ahead had
 * so much earlier.
 */
export function runningDifference(base: DayCourse, variant: DayCourse, seconds: number): RunningDifference {
  const [b, v] = [stepAt(base.counts, DONE, seconds), stepAt(variant.counts, DONE, seconds)];
  const lead = v === b ? 0 : v > b ? seconds - reached(variant, b) : reached(base, v) - seconds;
  // One that has finished its day stands still; the time between is then that from one end to the other.
  return { heads: v - b, seconds: lead, base: b, variant: v, ends: endsBy(base, variant, seconds) };
}

/** A day that does not end by itself has no end of work to compare. */
function endsBy(base: DayCourse, variant: DayCourse, seconds: number): RunningDifference["ends"] {
  const [b, v] = [base.record, variant.record];
  if (b.status !== "finished" || v.status !== "finished") return null;
  if (seconds < Math.max(b.workFinishSeconds, v.workFinishSeconds)) return null;
  const clock = (record: DayCourse["record"]) => record.startClockSeconds + record.workFinishSeconds;
  return { base: clock(b), variant: clock(v) };
}

/** When the count came to `count`. */
function reached({ counts }: DayCourse, count: number): number {
  const rows = counts.values.subarray(counts.from[DONE]!, counts.from[DONE + 1]!);
  const row = lastAtOrBefore(rows as Float64Array, count - 0.5) + 1;
  return counts.times[counts.from[DONE]! + Math.min(row, rows.length - 1)]!;
}

/** "The variant is 12 heads, 1.4 min ahead."; at the end of both days "The variant ended work 26 min earlier: 09:08, not 09:34." */
export function runningDifferenceWords({ heads, seconds, ends }: RunningDifference): string {
  const count = formatDecimals(Math.abs(heads), 0);
  const noun = Math.abs(heads) === 1 ? "head" : "heads";
  if (ends !== null) {
    const more = heads === 0 ? "" : ` It did ${count} ${noun} ${heads > 0 ? "more" : "fewer"}.`;
    return `${outcome(ends)}${more}`;
  }
  if (heads === 0) return "Both lines are level.";
  const time = Math.abs(seconds) < 1 ? "" : `, ${formatDuration(Math.abs(seconds))}`;
  return `The variant is ${count} ${noun}${time} ${heads > 0 ? "ahead" : "behind"}.`;
}

/** In minutes, as the clock times that stand beside it. */
function outcome({ base, variant }: { base: number; variant: number }): string {
  const minutes = Math.round(variant / 60) - Math.round(base / 60);
  if (minutes === 0) return `Both lines ended work at ${formatClock(base)}.`;
  const span = formatDuration(Math.abs(minutes) * 60);
  const way = minutes < 0 ? "earlier" : "later";
  return `The variant ended work ${span} ${way}: ${formatClock(variant)}, not ${formatClock(base)}.`;
}
