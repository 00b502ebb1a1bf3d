import type { StepTrace } from "../engine/index.ts";

const MINUTE = 60;

/**
 * Carcasses that left the line in each whole minute from the day's start to before `until` (seconds), from the steps of
 * their running count; an Error where that is not exact.
 */
export function exitsPerMinute(out: StepTrace, until: number): number[] {
  if (out.kind !== "exact") throw new Error("exitsPerMinute: the trace is not exact");
  const counts: number[] = new Array(Math.floor(until / MINUTE)).fill(0);
  for (let step = 1; step < out.times.length; step++) {
    const minute = Math.floor(out.times[step]! / MINUTE);
    if (minute < counts.length) counts[minute]! += out.values[step]! - out.values[step - 1]!;
  }
  return counts;
}
