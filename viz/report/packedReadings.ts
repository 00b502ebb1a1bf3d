import type { TimeReadings, TimeSeries } from "../pictures/index.ts";

/**
 * What a page needs to read a picture off at an instant, as little as will do: short keys, numbers to a tenth. The page's
 * script (`readerScript.ts`) unpacks it.
 */
export interface PackedReadings {
  /** Clock at the day's start, and the day's length, seconds. */
  start: number;
  end: number;
  series: PackedSeries[];
  spans: { name: string; spans: [number, number, string][] }[];
}

/** Bins of `b` seconds with mean `m` and, where they differ from it, lowest `l` and highest `h`; or steps `v` from times `t`. */
export type PackedSeries = { g: string; n: string; u: string } & (
  | { b: number; m: number[]; l?: number[]; h?: number[] }
  | { t: number[]; v: number[] }
);

export function packedReadings(readings: TimeReadings): PackedReadings {
  return {
    start: readings.startClockSeconds,
    end: Math.round(readings.endSeconds),
    series: readings.series.map(packedSeries),
    spans: readings.spans.map(({ name, spans }) => {
      return { name, spans: spans.map(({ from, to, text }) => [Math.round(from), Math.round(to), text]) };
    }),
  };
}

function packedSeries({ group, name, unit, trace }: TimeSeries): PackedSeries {
  const words = { g: group, n: name, u: unit };
  if (trace.kind === "exact") return { ...words, t: trace.times.map(Math.round), v: trace.values.map(tenth) };
  const bins = { ...words, b: trace.binSeconds, m: trace.mean.map(tenth) };
  return trace.high === trace.mean ? bins : { ...bins, l: trace.low.map(tenth), h: trace.high.map(tenth) };
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
