import { RunningMoments } from "./runningMoments.ts";

/** What to leave out at the beginning of one long run. */
export interface WarmUp {
  /** Values to delete: whole batches of them. */
  deleted: number;
  /** Values kept; those after the last whole batch are not among them. */
  kept: number;
  keptMean: number;
  /** The least value of the statistic. */
  statistic: number;
  /** The statistic for every number of deleted batches looked at, from 0 on. */
  statistics: number[];
  /** The least value stands at the last place looked at: the run is too short to tell where its beginning ends. */
  runTooShort: boolean;
}

/**
 * The marginal standard error rule for the beginning of a run (White 1997, Simulation 69(6)): of all numbers d of deleted
 * values the one for which sum (z - mean)^2 / (m - d)^2 over the m - d kept values is least; of equal ones the smaller.
 * Looks at no more than half of the values, because the statistic falls to 0 when hardly any are left.
 *
 * `values` in order of time, finite. Null with fewer than 4 ("not enough data"). O(n).
 */
export function mser(values: readonly number[]): WarmUp | null {
  const m = values.length;
  if (m < 4) return null;
  const most = Math.floor(m / 2);
  const moments = new RunningMoments();
  const statistics: number[] = new Array(most + 1);
  const means: number[] = new Array(most + 1);
  for (let deleted = m - 1; deleted >= 0; deleted--) {
    moments.add(values[deleted]!);
    if (deleted > most) continue;
    const { n, sd, mean } = moments;
    statistics[deleted] = (sd! ** 2 * (n - 1)) / n ** 2;
    means[deleted] = mean!;
  }
  const statistic = Math.min(...statistics);
  const deleted = statistics.indexOf(statistic);
  const runTooShort = deleted === most;
  return { deleted, kept: m - deleted, keptMean: means[deleted]!, statistic, statistics, runTooShort };
}
