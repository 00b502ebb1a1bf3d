import type { Varying } from "../random/index.ts";

/** Stage kinds. A crate step is a station whose work pieces are crates. */
export const STATION = 0;
export const DWELL = 1;

/** Special values of `nextStage`. */
export const OUT = -1;
export const HANGING_POINT = -2;

/** "No limit" for places, small enough to add heads to without leaving 32 bits. */
export const NO_LIMIT = 1 << 30;

/** What the calendar slot does at an entry. */
export const CREW_PEOPLE = 0;
export const CREW_BREAK = 1;
export const STAGE_PAUSE = 2;
export const HANGING_ENDS = 3;

/** Kinds of slots; a slot is a thing that has at most one pending event. */
export const SLOT_POSITION = 0;
export const SLOT_DWELL = 1;
export const SLOT_TRAVEL = 2;
export const SLOT_FAILURE = 3;
export const SLOT_CALENDAR = 4;
export const SLOT_LOAD = 5;
export const SLOT_STREAM = 6;

/**
 * A plan as the engine wants it: flat arrays indexed by stage, position, failure unit, crew, limit or slot; names only to
 * get back. Stage order: crate steps (when the supply comes in loads), then the plan's line. Built once, never changed:
 * any number of days may run on it at the same time.
 */
export interface CompiledLine {
  stages: StageColumns;
  positions: PositionColumns;
  failures: FailureColumns;
  crews: CrewColumns;
  calendar: CalendarColumns;
  limits: LimitColumns;
  slots: SlotColumns;
  supply: CompiledSupply;
  sectionNames: string[];
  /** Index 0 is "carcass". */
  destinationNames: string[];
  startClockSeconds: number;
  shiftEndSeconds: number;
  ceilingSeconds: number;
}

/** One row per stage. */
export interface StageColumns {
  count: number;
  /** The stage that takes heads from the supply. */
  hanging: number;
  names: string[];
  kind: Int8Array;
  /** Stage index, OUT, or HANGING_POINT. */
  next: Int32Array;
  /** Places in all: buffer + positions, or dwell places (NO_LIMIT: unlimited). */
  places: Int32Array;
  bufferPlaces: Int32Array;
  /** Row range in `positions`: from[stage] .. from[stage + 1]. */
  positionFrom: Int32Array;
  /** Crew index, or -1. */
  crew: Int32Array;
  people: Int32Array;
  /** Section index, or -1 for crate steps. */
  section: Int32Array;
  /** Cycle or dwell time. */
  work: Varying[];
  travel: (Varying | null)[];
  /** Row range in `removalShare` / `removalTo`. */
  removalFrom: Int32Array;
  /** Cumulative share within its stage. */
  removalShare: Float64Array;
  /** Destination index. */
  removalTo: Int32Array;
}

/** One row per position; a dwell stage has one, its way out. */
export interface PositionColumns {
  count: number;
  stage: Int32Array;
  /** Row range in `failures` of the failures that stop this position alone and run on its working time. */
  ownFailureFrom: Int32Array;
}

/**
 * One row per failure unit: a thing that breaks by itself. The first `ownCount` rows belong to single positions and run on
 * working time (their events use the position's slot); the others have slots of their own.
 */
export interface FailureColumns {
  count: number;
  ownCount: number;
  names: string[];
  stage: Int32Array;
  /** Range of positions it stops. */
  positionFrom: Int32Array;
  positionTo: Int32Array;
  /** 1: uptime runs only while at least one of its positions works. */
  onRunningTime: Int8Array;
  uptime: Varying[];
  repair: Varying[];
  /** Own slot, or -1. */
  slot: Int32Array;
  /** Rows (from[stage] .. from[stage + 1]) of `stationClock`: units of the whole station on running time. */
  stationClockFrom: Int32Array;
  stationClock: Int32Array;
}

export interface CrewColumns {
  count: number;
  names: string[];
  /** Index in CREW_RULES. */
  rule: Int8Array;
  peopleMax: Int32Array;
  /** Row range in `stations`, stages served, in line order. */
  stationFrom: Int32Array;
  stations: Int32Array;
}

/** Planned changes, by time. */
export interface CalendarColumns {
  count: number;
  seconds: Float64Array;
  action: Int8Array;
  /** Crew or stage index. */
  target: Int32Array;
  /** People for CREW_PEOPLE; +1 / -1 for the others. */
  amount: Int32Array;
}

/**
 * Limits and the points that feed them. Point index: stage x 4 + moment (order of MOMENTS); two more at the end for the
 * arrival and for leaving the line. operations[from[point] .. from[point + 1]]: limit x 2 (+ 1 when it is the far end).
 */
export interface LimitColumns {
  count: number;
  names: string[];
  minSeconds: Float64Array;
  maxSeconds: Float64Array;
  operationFrom: Int32Array;
  operations: Int32Array;
}

/** Slot number = rank among simultaneous events: lower goes first. */
export interface SlotColumns {
  count: number;
  kind: Int8Array;
  owner: Int32Array;
  ofPosition: Int32Array;
  /** By stage: slot of the travel that leaves it, or -1. */
  ofTravel: Int32Array;
  calendar: number;
  supply: number;
}

export type CompiledSupply =
  | { kind: "loads"; loads: CompiledLoad[]; cratesAtHanging: number; unloading: number; feeding: number }
  | { kind: "stream"; interarrival: Varying; heads: number; turnAway: boolean }
  | { kind: "saturated"; heads: number };

export interface CompiledLoad {
  name: string;
  seconds: number;
  delay: Varying | null;
  crates: number;
  headsPerCrate: number;
  deadOnArrivalShare: number;
}
