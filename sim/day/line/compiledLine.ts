import type { ChillingCurve } from "../../maths/chilling/index.ts";
import type { Varying } from "../../maths/random/index.ts";
import { STAGE_KINDS, type StepKind } from "../../text/kinds/index.ts";
import type { KillLine } from "./killLine.ts";

/** Stage kinds. A crate step is a station whose work pieces are crates. */
export const STATION = 0;
export const DWELL = 1;
export const CHAIN = 2;
export const CHAIN_STATION = 3;

/** By the name of the kind, in plans and results. */
export const KIND_NUMBERS = {
  crates: STATION,
  station: STATION,
  dwell: DWELL,
  chain: CHAIN,
  "chain station": CHAIN_STATION,
} as const satisfies Record<StepKind, number>;

/** The name for the number of something that takes heads. */
export function kindName(kind: number): StepKind {
  return HEAD_KINDS.find((name) => KIND_NUMBERS[name] === kind)!;
}
const HEAD_KINDS: readonly StepKind[] = [...STAGE_KINDS, "chain station"];

/** Special values of `next`. */
export const OUT = -1;
export const HANGING_POINT = -2;
export const LORRY = -3;

/** "No limit" for places, small enough to add heads to without leaving 32 bits. */
export const NO_LIMIT = 1 << 30;

/** What a calendar entry changes. */
export const CREW_PEOPLE = 0;
export const CREW_BREAK = 1;
export const STAGE_PAUSE = 2;
export const HANGING_ENDS = 3;
export const CHAIN_PACE = 5;
export const STAGE_CLOSES = 6;
/** Not in the calendar but in the list of returns: crates are back, full, for the next load. */
export const FLEET_BACK = 4;

/** What a head's passing a point of the kill line means. */
export const STUNNED = 1;
export const STUCK = 2;
export const BLED = 3;

/** Kinds of slots; a slot is a thing that has at most one pending event. */
export const SLOT_POSITION = 0;
export const SLOT_DWELL = 1;
export const SLOT_TRAVEL = 2;
export const SLOT_BREAKDOWN = 3;
export const SLOT_CALENDAR = 4;
export const SLOT_LOAD = 5;
export const SLOT_STREAM = 6;
export const SLOT_CHAIN = 7;
export const SLOT_VESSEL = 8;
export const SLOT_RETURN = 9;
export const SLOT_HOLD = 10;
export const SLOT_LATE = 11;
export const SLOT_HELP = 12;

/**
 * A plan as the engine wants it: flat arrays indexed by stage, position, breakdown, crew, limit or slot; names only to
 * get back. Stage order: crate steps (when the supply comes in loads), then the plan's line, a chain before the stations
 * on it. Built once, never changed: any number of days may run on it at the same time.
 */
export interface CompiledLine {
  stages: StageColumns;
  positions: PositionColumns;
  breakdowns: BreakdownColumns;
  crews: CrewColumns;
  calendar: CalendarColumns;
  points: PointColumns;
  limits: LimitColumns;
  gates: GateColumns;
  chains: ChainColumns;
  vessels: VesselColumns;
  /** The care for stunned heads, or null. */
  stunned: CompiledStunned | null;
  slots: SlotColumns;
  supply: CompiledSupply;
  /** What is there when the day begins, longest first; null where nothing is. */
  atStart: { crates: CompiledLoad[]; carcasses: StartedCarcasses[] } | null;
  /** Sections that are cleaned one by one, by index, and who does it; null where the plan names none. */
  cleaning: { sections: { section: number; seconds: number; people: number }[]; crews: number[] } | null;
  /** Null where nothing in the plan says where heads are stunned. */
  killLine: KillLineColumns | null;
  sectionNames: string[];
  /** Index 0 is "carcass". */
  destinationNames: string[];
  productNames: string[];
  startClockSeconds: number;
  shiftEndSeconds: number;
  ceilingSeconds: number;
}

/** One row per stage. */
export interface StageColumns {
  count: number;
  /** The stage that takes heads from the supply; crate steps stand before it. */
  hanging: number;
  names: string[];
  kind: Int8Array;
  /** Stage index, OUT, HANGING_POINT or LORRY. */
  next: Int32Array;
  /** Places in all: buffer + what the positions hold, dwell places, shackles (NO_LIMIT: unlimited). */
  places: Int32Array;
  bufferPlaces: Int32Array;
  /** Items that a position takes in one cycle: 1 but for crate steps. */
  perCycle: Int32Array;
  headsPerHook: Int32Array;
  /** Row range in `positions`: from[stage] .. from[stage + 1]. */
  positionFrom: Int32Array;
  /** Row range in `crew`: crews that may work here, the preferred one first. */
  crewFrom: Int32Array;
  crew: Int32Array;
  people: Int32Array;
  /** Section index, or -1 for crate steps. */
  section: Int32Array;
  /** Cycle or dwell time; a constant 0 where a chilling curve or a chain decides. */
  work: Varying[];
  chilling: (ChillingCurve | null)[];
  /** The cycle is multiplied by 1 + perKg x (weight - at), never below a tenth. */
  weightPerKg: Float64Array;
  weightAt: Float64Array;
  /** Seconds before the first head of another lot; 0 for none. */
  changeoverSeconds: Float64Array;
  /** How the cycle falls with the heads done, or null. */
  learning: (LearningColumns | null)[];
  /** Speed by the hour, or null; that of a chain changes with the calendar. */
  pace: (PaceColumns | null)[];
  /** Weights that the station takes, and the stage for the others (-1: takes all). */
  weightFrom: Float64Array;
  weightTo: Float64Array;
  weightElse: Int32Array;
  travel: (Varying | null)[];
  /** Row range in `branchShare` / `branchTo`: removals, then diversions. */
  branchFrom: Int32Array;
  /** Cumulative share within its stage; of the stages in `sharesVary` each branch's own, or the most that it can be. */
  branchShare: Float64Array;
  /** By branch: what its share depends on, or null. By stage: 1 where some branch has that. */
  branchBy: (BranchShares | null)[];
  sharesVary: Int8Array;
  /** Destination index for a removal, -1 - stage index for a diversion. */
  branchTo: Int32Array;
  /** Row range in the product columns. */
  productFrom: Int32Array;
  productName: Int32Array;
  productShare: Float64Array;
  /** 1: share of live weight; 0: of what is left. */
  productOfLive: Int8Array;
  /** Vessel index, or -1. */
  productVessel: Int32Array;
  /** Row range in `gate`: gates that hold back the start of work here. */
  gateFrom: Int32Array;
  gate: Int32Array;
  /** Row range in `vessel`: vessels that stop the stage when full. */
  vesselFrom: Int32Array;
  vessel: Int32Array;
  /** Chain index of a chain or of a station on it, else -1. */
  chain: Int32Array;
  /** 1: on the stretch that a planned stop may not catch a head in. */
  protected: Int8Array;
}

/** A share by the head's live weight or by a time between two points of its way. */
export interface BranchShares {
  /** Index of the time watched for it (a span), or -1 for the live weight. */
  span: number;
  /** Kilograms or seconds, ascending; the share there. */
  at: Float64Array;
  share: Float64Array;
  /** The share stays as it is until the next point. */
  steps: boolean;
}

/** The cycle is multiplied by what stands between the two rows; by the last from there on, by the first before. */
export interface LearningColumns {
  /** Heads done at a position, ascending; the factor there. */
  heads: Float64Array;
  factor: Float64Array;
  done: number;
}

/** One row per hour from which on another pace holds, ascending. */
export interface PaceColumns {
  fromSeconds: Float64Array;
  /** By this a time as written is divided. */
  speed: Float64Array;
  /** Seconds that one position (a chain: one step) takes at least; 0 without an upper rate. */
  leastSeconds: Float64Array;
}

/** One row per position; a dwell stage and a chain have one, their way out. */
export interface PositionColumns {
  count: number;
  stage: Int32Array;
  /** Row range in `breakdowns` of those that stop this position alone and run on its working time. */
  ownBreakdownFrom: Int32Array;
}

/**
 * One row per breakdown unit: a thing that breaks by itself. The first `ownCount` rows belong to single positions and run on
 * working time (their events use the position's slot); the others have slots of their own, shared ones last.
 */
export interface BreakdownColumns {
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
  /** A planned replacement after so much uptime (Infinity: none), and how long it takes. */
  replacedAfter: Float64Array;
  replacementSeconds: Float64Array;
  /** Crew that repairs, or -1. */
  crew: Int32Array;
  /** Stage that takes the head in hand, or -1 when its work is resumed. */
  headTo: Int32Array;
  /** Own slot, or -1. */
  slot: Int32Array;
  /** Units from this row on stop several stages at once; their `stage` and range of positions are -1. */
  sharedFrom: number;
  /** Row range in `stopped`, by shared unit (row - sharedFrom): the stages that it stops, in line order. */
  stoppedFrom: Int32Array;
  stopped: Int32Array;
  /** So many of its stages must work for the uptime to run. */
  runningLeast: Int32Array;
  /** Rows (from[stage] .. from[stage + 1]) of `stationClock`: units of the whole station, or shared, on running time. */
  stationClockFrom: Int32Array;
  stationClock: Int32Array;
}

export interface CrewColumns {
  count: number;
  names: string[];
  /** Index in CREW_RULES. */
  rule: Int8Array;
  peopleMax: Int32Array;
  /** By crew: people by shift. */
  shiftPeople: number[][];
  /** By crew: who steps in where fewer than so many (by shift) are there, and what each of those keeps; null: nobody. */
  cover: (CoverColumns | null)[];
  walkSeconds: Float64Array;
  absentShare: Float64Array;
  /** By crew: end of its last shift where it leaves when its own work is done; NaN where it leaves with the day's last work. */
  leavesFrom: Float64Array;
  /** 1: works on the stretch that a planned stop may not catch a head in. */
  protected: Int8Array;
  /** Row range in `stations`, stages served, in line order. */
  stationFrom: Int32Array;
  stations: Int32Array;
}

/** Crews by index, in order of preference. */
export interface CoverColumns {
  by: number[];
  keeps: number[];
  atLeast: number[];
}

/** Planned changes, by time. */
export interface CalendarColumns {
  count: number;
  seconds: Float64Array;
  action: Int8Array;
  /** Crew or stage index. */
  target: Int32Array;
  /** By plan, whoever is missing, for CREW_PEOPLE; row of the chain's pace for CHAIN_PACE; 0 otherwise. */
  amount: Int32Array;
  /** The shift that begins, for CREW_PEOPLE; -1 where none does, and for the others. */
  shift: Int8Array;
  /** How long a break or pause lasts; 0 for the others. */
  lengthSeconds: Float64Array;
  /** When a break ends for everybody; NaN where each has its whole length, and for the others. */
  endSeconds: Float64Array;
}

/**
 * Points of a head's way: index stage x 4 + moment (order of MOMENTS); two more at the end for the arrival and for leaving
 * the line. limit[limitFrom[point] .. limitFrom[point + 1]]: limit x 2 (+ 1 when it is the far end), spans that shares depend
 * on counted behind the limits; gate: gates left.
 */
export interface PointColumns {
  /** 1: a limit or a gate has an end here. */
  watched: Uint8Array;
  limitFrom: Int32Array;
  limit: Int32Array;
  spans: number;
  gateFrom: Int32Array;
  gate: Int32Array;
}

export interface LimitColumns {
  count: number;
  names: string[];
  minSeconds: Float64Array;
  maxSeconds: Float64Array;
}

/** Gates; the last one is the stretch of the safe stop when the plan names one (no number holds heads back there). */
export interface GateColumns {
  count: number;
  names: string[];
  /** Stage whose start is held back. */
  from: Int32Array;
  atMost: Int32Array;
  /** Index of the safe stop's stretch, or -1. */
  safeStop: number;
}

/** What is done so that no stunned head waits between two stations. */
export interface CompiledStunned {
  /** Stage that stuns, and the one that sticks. */
  from: number;
  to: number;
  hold: boolean;
  /** Limits that watch the time from (the start or end of) stunning to (the start or end of) sticking. */
  limits: Int32Array;
  late: CompiledHelp | null;
}

export interface CompiledHelp {
  afterSeconds: number;
  takesSeconds: number;
  /** True: stuck where it is; false: stunned again. */
  sticks: boolean;
  /** Crew that helps, or -1. */
  crew: number;
}

export interface ChainColumns {
  count: number;
  /** Stage index of the chain; its stations are stages firstStation .. firstStation + stationCount. */
  stage: Int32Array;
  stationCount: Int32Array;
  places: Int32Array;
  secondsPerShackle: Float64Array;
  /** Shackles in circulation (NO_LIMIT: a closed chain) and the seconds of their way back. */
  shackles: Int32Array;
  backSeconds: Float64Array;
  /** Stage for heads that passed a window unfinished, or -1. */
  unfinishedTo: Int32Array;
  slot: Int32Array;
  /** By stage (stations on chains only): first shackle of the window, the one after its last, and 1 when it stops the chain. */
  windowFrom: Int32Array;
  windowTo: Int32Array;
  stopsChain: Int8Array;
}

export interface VesselColumns {
  count: number;
  names: string[];
  capacityKg: Float64Array;
  emptyAtKg: Float64Array;
  emptyingSeconds: Float64Array;
  crew: Int32Array;
  /** 1: stops the stages that feed it when full; 0: spills. */
  stopsFeeders: Int8Array;
  slot: Int32Array;
  /** Row range in `feeder`: stages that feed it. */
  feederFrom: Int32Array;
  feeder: Int32Array;
}

/** From stunning to the end of bleeding. */
export interface KillLineColumns {
  names: KillLine;
  /** Stages that are looked at: those of `names.steps`. */
  steps: Int32Array;
  /** The last stage that belongs to it. */
  last: number;
  /** marks[stage * moments + moment]: STUNNED, STUCK, BLED, or 0. */
  marks: Int8Array;
}

/** Slot number = rank among simultaneous events: lower goes first. */
export interface SlotColumns {
  count: number;
  kind: Int8Array;
  owner: Int32Array;
  ofPosition: Int32Array;
  /** By stage: slot of the travel that leaves it, or -1. */
  ofTravel: Int32Array;
  returns: number;
  calendar: number;
  supply: number;
  /** When a held stage looks again, a stunned head has waited too long, help for it is over; -1 without such care. */
  hold: number;
  late: number;
  help: number;
}

export type CompiledSupply =
  | CompiledLoads
  | { kind: "stream"; interarrival: Varying; heads: number; turnAway: boolean; liveWeightKg: Varying }
  | { kind: "saturated"; heads: number; liveWeightKg: Varying };

export interface CompiledLoads {
  kind: "loads";
  loads: CompiledLoad[];
  cratesAtHanging: number;
  /** Stage where crates leave their lorry; stage whose queue is the lairage; first stage of the way back, or -1. */
  unloading: number;
  feeding: number;
  firstBack: number;
  /** Crates in circulation, or NO_LIMIT. */
  fleet: number;
  awaySeconds: number;
}

/** Carcasses that hang in a stage, as a load that came before the day began. `leftShare`: what is left of their live weight. */
export interface StartedCarcasses {
  load: CompiledLoad;
  stage: number;
  heads: number;
  leftShare: number;
}

export interface CompiledLoad {
  name: string;
  /** Null: a lot of its own. */
  lot: string | null;
  /** Chance that all of it is taken off, at the end of which stage (-1: it never is), for which destination. */
  withdrawnChance: number;
  withdrawnAt: number;
  withdrawnTo: number;
  /** Stage in which its carcasses are held, -1 where they are not; and until when, seconds. */
  heldIn: number;
  heldUntil: number;
  seconds: number;
  delay: Varying | null;
  comesShare: number;
  crates: number;
  headsPerCrate: number;
  deadOnArrivalShare: number;
  liveWeightKg: Varying;
}
