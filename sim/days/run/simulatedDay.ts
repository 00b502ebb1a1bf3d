import type { DayRecord } from "../../day/engine/index.ts";

/** What is kept of a simulated day: the values of `DaySource.keys` in that order, the day itself of replication 0. */
export interface SimulatedDay {
  variant: number;
  replication: number;
  values: (number | null)[];
  day: DayRecord | null;
}

/** A day that could not be simulated, and why. */
export interface FailedDay {
  variant: number;
  replication: number;
  message: string;
}

export interface BatchResult {
  days: SimulatedDay[];
  failed: FailedDay[];
}
