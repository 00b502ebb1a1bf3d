import { clockAt } from "../frame/index.ts";
import type { TraceColumns } from "../marks/index.ts";
import type { Cell, ChartTable } from "./chartTable.ts";

/** What a picture over the clock shows at any instant. */
export interface TimeReadings {
  startClockSeconds: number;
  endSeconds: number;
  series: readonly TimeSeries[];
  /** Things that are so from one time to another. */
  spans: readonly TimeSpans[];
}

export interface TimeSeries {
  /** What it belongs to, where several numbers do; "" else. Numbers of one group that are 0 are not told. */
  group: string;
  name: string;
  unit: string;
  trace: TraceColumns;
}

export interface TimeSpans {
  name: string;
  /** Seconds after the day's start. */
  spans: readonly { from: number; to: number; text: string }[];
}

/** Means by bin, of which neither the lowest nor the highest value is known. */
export function meansOnly(binSeconds: number, values: readonly number[]): TraceColumns {
  return { kind: "binned", binSeconds, low: values, high: values, mean: values };
}

export function scene({ startClockSeconds, endSeconds }: { startClockSeconds: number; endSeconds: number }) {
  return { startClockSeconds, endSeconds, spans: [] };
}

/** A series that belongs to nothing else. */
export function plain(name: string, unit: string, trace: TraceColumns): TimeSeries {
  return { group: "", name, unit, trace };
}

const STEPS = [300, 600, 900, 1800, 3600, 7200, 14_400];
const MAX_ROWS = 48;

/** Traces as a table of at most some 48 rows: mean and most of each round step of time; means alone where no more is known. */
export function timeTable({ startClockSeconds, endSeconds, series }: TimeReadings): ChartTable {
  const step =
    STEPS.find((seconds) => endSeconds / seconds <= MAX_ROWS) ?? Math.ceil(endSeconds / MAX_ROWS / 3600) * 3600;
  const columns = series.flatMap(({ group, name, unit, trace }) => {
    const { mean, high } = resampled(trace, endSeconds, step);
    const title = group === "" ? name : `${group}, ${name}`;
    const most = { name: `${title}: most`, unit, values: high };
    const means = { name: `${title}: mean`, unit, values: mean };
    return trace.kind === "binned" && trace.high === trace.mean ? [means] : [means, most];
  });
  const rows = Array.from({ length: Math.max(1, Math.ceil(endSeconds / step - 1e-9)) }, (_, row): Cell[] => {
    return [clockAt(row * step, startClockSeconds), ...columns.map(({ values }) => values[row]!)];
  });
  return {
    columns: [
      { name: "from", unit: `clock time, steps of ${step / 60} min` },
      ...columns.map(({ name, unit }) => ({ name, unit })),
    ],
    rows,
  };
}

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
