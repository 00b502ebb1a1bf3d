import type { StepTrace } from "../contract.ts";

/** A trace by time bin; low and high are values it took in the bin, mean is weighted by time. */
export interface BinnedTrace {
  binSeconds: number;
  low: number[];
  high: number[];
  mean: number[];
}

/**
 * A trace in bins of about `binSeconds`: recorded bins are joined, as many whole ones as fit; steps are worked out over
 * bins of just that length. Joining keeps the lowest and the highest value, so no peak is lost. Empty for no points.
 */
export function binnedTrace(trace: StepTrace, binSeconds: number): BinnedTrace {
  if (trace.kind === "binned") return joined(trace, Math.max(1, Math.floor(binSeconds / trace.binSeconds)));
  const bins = Math.max(0, Math.ceil(trace.endSeconds / binSeconds));
  const result: BinnedTrace = { binSeconds, low: [], high: [], mean: [] };
  let next = 0;
  let value = 0;
  for (let bin = 0; bin < bins; bin++) {
    const from = bin * binSeconds;
    const to = Math.min(trace.endSeconds, from + binSeconds);
    let [at, area] = [from, 0];
    while (next < trace.times.length && trace.times[next]! <= from) value = trace.values[next++]!;
    let [low, high] = [value, value];
    while (next < trace.times.length && trace.times[next]! < to) {
      area += value * (trace.times[next]! - at);
      at = trace.times[next]!;
      value = trace.values[next++]!;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    area += value * (to - at);
    result.low.push(low);
    result.high.push(high);
    result.mean.push(to > from ? area / (to - from) : value);
  }
  return result;
}

/** Every `many` neighbouring bins as one; the last one may cover less time, so means are weighted by it. */
function joined(trace: BinnedTrace & { endSeconds: number }, many: number): BinnedTrace {
  const { binSeconds, endSeconds } = trace;
  if (many === 1) return { binSeconds, low: trace.low, high: trace.high, mean: trace.mean };
  const result: BinnedTrace = { binSeconds: binSeconds * many, low: [], high: [], mean: [] };
  for (let from = 0; from < trace.mean.length; from += many) {
    const to = Math.min(trace.mean.length, from + many);
    let [area, seconds] = [0, 0];
    for (let bin = from; bin < to; bin++) {
      const covered = Math.max(0, Math.min(endSeconds, (bin + 1) * binSeconds) - bin * binSeconds);
      area += trace.mean[bin]! * covered;
      seconds += covered;
    }
    result.low.push(Math.min(...trace.low.slice(from, to)));
    result.high.push(Math.max(...trace.high.slice(from, to)));
    result.mean.push(seconds > 0 ? area / seconds : trace.mean[from]!);
  }
  return result;
}

/** Bins for a day drawn some 500 px wide: the day over 240, to whole half minutes. */
export function drawingBinSeconds(endSeconds: number): number {
  return Math.max(30, Math.ceil(endSeconds / 240 / 30) * 30);
}
