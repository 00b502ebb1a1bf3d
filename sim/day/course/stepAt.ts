import type { Steps } from "./stepLog.ts";

/** Row of list `list` that holds at `seconds`; -1 before its first one. Binary search. */
export function rowAt({ from, times }: Steps, list: number, seconds: number): number {
  return lastAtOrBefore(times, seconds, from[list]!, from[list + 1]!);
}

/** Value of list `list` at `seconds`; `before` where it has none yet. */
export function stepAt(steps: Steps, list: number, seconds: number, before = 0): number {
  const row = rowAt(steps, list, seconds);
  return row < 0 ? before : steps.values[row]!;
}

/** Index of the last time that is not after `seconds` among ascending `times[low .. high - 1]`; -1 when all are after it. */
export function lastAtOrBefore(times: Float64Array, seconds: number, low = 0, high = times.length): number {
  const first = low;
  let [from, to] = [low, high];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (times[middle]! <= seconds) from = middle + 1;
    else to = middle;
  }
  return from === first ? -1 : from - 1;
}
