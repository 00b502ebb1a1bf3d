import { type DayCourse, lastAtOrBefore, stepAt } from "../../../sim/day/course/index.ts";
import { formatDecimals, formatDuration } from "../../../sim/text/units/index.ts";

/** List of "done" in the course's counts. */
const DONE = 2;

export interface RunningDifference {
  /** Carcasses done in the variant less those in the base. */
  heads: number;
  /** How much earlier (positive) the variant had as many as the base has now, or the other way about; seconds. */
  seconds: number;
  base: number;
  variant: number;
}

/**
 * How far the variant is ahead of the base at `seconds`. In time: the one behind has a count now that the one ahead had
 * so much earlier.
 */
export function runningDifference(base: DayCourse, variant: DayCourse, seconds: number): RunningDifference {
  const [b, v] = [stepAt(base.counts, DONE, seconds), stepAt(variant.counts, DONE, seconds)];
  const lead = v === b ? 0 : v > b ? seconds - reached(variant, b) : reached(base, v) - seconds;
  // One that has finished its day stands still; the time between is then that from one end to the other.
  return { heads: v - b, seconds: lead, base: b, variant: v };
}

/** When the count came to `count`. */
function reached({ counts }: DayCourse, count: number): number {
  const rows = counts.values.subarray(counts.from[DONE]!, counts.from[DONE + 1]!);
  const row = lastAtOrBefore(rows as Float64Array, count - 0.5) + 1;
  return counts.times[counts.from[DONE]! + Math.min(row, rows.length - 1)]!;
}

/** "The variant is 12 heads, 1.4 min ahead." */
export function differenceWords({ heads, seconds }: RunningDifference): string {
  if (heads === 0) return "Both lines are level.";
  const way = heads > 0 ? "ahead" : "behind";
  const count = formatDecimals(Math.abs(heads), 0);
  const time = Math.abs(seconds) < 1 ? "" : `, ${formatDuration(Math.abs(seconds))}`;
  return `The variant is ${count} ${Math.abs(heads) === 1 ? "head" : "heads"}${time} ${way}.`;
}
