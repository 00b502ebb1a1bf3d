import { compensatedSum } from "./compensatedSum.ts";

/**
 * Welch's way to see where the beginning of a run ends (Welch 1983, in *The Computer Performance Modeling Handbook*):
 * the average over replications at each time, smoothed over `window` neighbours on either side. The first values have as
 * many neighbours as there are before them. To be looked at: the warm-up ends where the smooth curve becomes level.
 *
 * `replications[replication][time]`, all of one length m; 0 <= `window` < m, whole; else a RangeError. Gives m averages
 * and m - window smoothed ones. Empty for no replications.
 */
export function welchAverage(
  replications: readonly (readonly number[])[],
  window: number,
): { averages: number[]; smoothed: number[] } {
  const first = replications[0];
  if (first === undefined) return { averages: [], smoothed: [] };
  const m = first.length;
  if (replications.some(({ length }) => length !== m))
    throw new RangeError("welchAverage: the replications have different lengths; cut them to one");
  if (!(Number.isInteger(window) && window >= 0 && window < m))
    throw new RangeError(`welchAverage: a window of ${window}; it must be whole, from 0 to ${m - 1}`);
  const averages = first.map((_, time) => compensatedSum(replications.map((run) => run[time]!)) / replications.length);
  const smoothed = Array.from({ length: m - window }, (_, time) => {
    const reach = Math.min(time, window);
    return compensatedSum(averages.slice(time - reach, time + reach + 1)) / (2 * reach + 1);
  });
  return { averages, smoothed };
}
