import type { StepTrace } from "../contract.ts";

/** A trace by time bin; low and high are values it took in the bin, mean is weighted by time. */
export interface BinnedTrace {
  binSeconds: number;
  low: number[];
  high: number[];
  mean: number[];
}

/** A trace in bins: as recorded where it is binned, otherwise worked out over bins of `binSeconds`. Empty for no points. */
export function binnedTrace(trace: StepTrace, binSeconds: number): BinnedTrace {
  if (trace.kind === "binned") return trace;
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

/** Bins for a day drawn some 500 px wide: the day over 240, to whole half minutes. */
export function drawingBinSeconds(endSeconds: number): number {
  return Math.max(30, Math.ceil(endSeconds / 240 / 30) * 30);
}
