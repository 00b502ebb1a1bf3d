import type { TraceColumns } from "../marks/index.ts";

export interface Resampled {
  low: number[];
  high: number[];
  mean: number[];
}

/**
 * A trace over whole steps of `stepSeconds` from 0 to `endSeconds`: means weighted by time, lowest and highest of all
 * that touches a step, so that no peak is lost. A bin that lies over the edge of two steps counts in both.
 */
export function resampled(trace: TraceColumns, endSeconds: number, stepSeconds: number): Resampled {
  const steps = Math.max(1, Math.ceil(endSeconds / stepSeconds - 1e-9));
  const low = new Array<number>(steps).fill(Number.POSITIVE_INFINITY);
  const high = new Array<number>(steps).fill(Number.NEGATIVE_INFINITY);
  const [area, seconds] = [new Array<number>(steps).fill(0), new Array<number>(steps).fill(0)];
  for (const piece of piecesOf(trace, endSeconds)) {
    for (let step = Math.floor(piece.from / stepSeconds); step < steps && step * stepSeconds < piece.to; step++) {
      const covered = Math.min(piece.to, (step + 1) * stepSeconds) - Math.max(piece.from, step * stepSeconds);
      if (covered <= 0) continue;
      low[step] = Math.min(low[step]!, piece.low);
      high[step] = Math.max(high[step]!, piece.high);
      area[step]! += covered * piece.mean;
      seconds[step]! += covered;
    }
  }
  const known = (values: number[]) => values.map((value) => (Number.isFinite(value) ? value : 0));
  return {
    low: known(low),
    high: known(high),
    mean: area.map((sum, step) => (seconds[step]! > 0 ? sum / seconds[step]! : 0)),
  };
}

interface Piece {
  from: number;
  to: number;
  low: number;
  high: number;
  mean: number;
}

function piecesOf(trace: TraceColumns, endSeconds: number): Piece[] {
  if (trace.kind === "exact") {
    return trace.times.map((from, index) => {
      const value = trace.values[index]!;
      return { from, to: trace.times[index + 1] ?? endSeconds, low: value, high: value, mean: value };
    });
  }
  const { binSeconds } = trace;
  return trace.mean.map((mean, bin) => {
    const to = Math.min(endSeconds, (bin + 1) * binSeconds);
    return { from: bin * binSeconds, to, low: trace.low[bin]!, high: trace.high[bin]!, mean };
  });
}
