import type { DayRecord } from "../engine/index.ts";
import type { LineSketch } from "./lineSketch.ts";
import type { HeadWays } from "./passLog.ts";
import type { Steps } from "./stepLog.ts";

/**
 * The whole course of one simulated day: what was where at any second of it. Plain data in typed arrays, so that a
 * picture can be drawn of any moment, forwards or backwards, without the engine. Seconds after the day's start.
 */
export interface DayCourse {
  sketch: LineSketch;
  record: DayRecord;
  ways: HeadWays;
  /** One list per position: index in STATES; of a chain's own position whether it moves. */
  states: Steps;
  /** One list per position: number of the head in it, -1 for none (crate steps: 0 with a crate). */
  held: Steps;
  /** One list per stage: what the engine shows as waiting (dwell stages and chains: present). */
  waiting: Steps;
  /** One list per section: heads in it. */
  sections: Steps;
  /** One list per crew: people at work, and people on duty. */
  busy: Steps;
  onDuty: Steps;
  /** Crates, one list each in the order of CRATE_PLACES. */
  crates: Steps;
  /** Heads, one list each in the order of HEAD_COUNTS. */
  counts: Steps;
  /** Kilograms in each vessel, to a hundredth of its capacity. */
  vessels: Steps;
  /** One list per chain: shackles it has moved since the day's start; straight lines between the rows. */
  chainMoves: Steps;
  /** Time limits that came near or were passed. */
  dangers: LimitDanger[];
  /** Times at which anything happened, ascending, each once. */
  moments: Float64Array;
}

/** At the hanging point; emptied and on their way back; clean and without a lorry. */
export const CRATE_PLACES = ["at hanging", "empty", "clean"] as const;

/** arrived: heads of the loads or the stream that came; hung: taken onto the line; done: carcasses whose last work at a station is over; out: carcasses out. */
export const HEAD_COUNTS = ["arrived", "hung", "done", "out", "taken off"] as const;

/** A head's time between the two points of a limit came near its maximum or beyond it, or fell short of its minimum. */
export interface LimitDanger {
  /** Index into the record's limits. */
  limit: number;
  head: number;
  /** From when it is flagged: 80 % of the maximum; or when the head came too early. */
  fromSeconds: number;
  /** When the limit is passed; Infinity when it was kept after all. */
  beyondSeconds: number;
  /** The head reached the far point. */
  untilSeconds: number;
}
