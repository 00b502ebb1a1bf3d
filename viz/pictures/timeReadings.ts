import type { TraceColumns } from "../marks/index.ts";

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
