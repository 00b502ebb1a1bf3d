import type { KillStopsRecord } from "../dayRecord.ts";
import type { Item } from "./item.ts";

/** Whoever writes down the stops of the kill line, as the day that is watched calls it; see `KillStops`. */
export interface KillStopWatch {
  /** What was to happen at this instant has happened. */
  look(): void;
  /** A head passes a point of its way. */
  pass(item: Item, stage: number, moment: number, now: number): void;
  /** A head leaves the line. */
  leave(head: number, now: number): void;
  /** The warm-up is over. */
  forget(now: number): void;
  /** The day has ended. */
  record(): KillStopsRecord;
}
