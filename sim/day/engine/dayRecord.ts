import type { StepKind } from "../../text/kinds/index.ts";
import type { PathCell } from "./binding/pathCells.ts";

/** What a position is doing; the order is the order of the columns in every state table. */
export const STATES = ["working", "blocked", "starved", "no crew", "down", "on break"] as const;
export type State = (typeof STATES)[number];

/**
 * What one simulated day left behind: plain data (structured-clone and JSON safe, but for `Infinity`), seconds after the
 * day's start, heads, kilograms. Time averages run from 0 to `finishSeconds` unless the run had a warm-up.
 */
export interface DayRecord {
  replication: number;
  /**
   * "finished": every head that had to leave did. "ceiling": the plan's longest day was reached first. "stuck": heads are
   * left but nothing can happen any more (`stuckAt` names the stages that hold them).
   */
  status: "finished" | "ceiling" | "stuck";
  stuckAt: string[];
  /** What was left where, and what it waited for, on a day that did not end by itself; in line order. */
  left: LeftRecord[];
  startClockSeconds: number;
  /** Start of the time watched: 0 unless a warm-up was cut off. */
  watchedFromSeconds: number;
  /** The last head left the line, chiller included (or the ceiling was reached). */
  finishSeconds: number;
  /** The last work of a machine or a person on a head ended (dwelling is no work); 0 when there was none. */
  workFinishSeconds: number;
  /** End of the last shift; what lies beyond is overtime. */
  shiftEndSeconds: number;
  events: number;
  heads: HeadCounts;
  stages: StageRecord[];
  crews: CrewRecord[];
  sections: SectionRecord[];
  limits: LimitRecord[];
  /** Arrival (of the load, or of the head in a stream) to leaving the line, carcasses only. */
  timeInSystem: Tally;
  loads: LoadRecord[];
  chains: ChainRecord[];
  gates: GateRecord[];
  vessels: VesselRecord[];
  /** Help for stunned heads that waited too long; null where the plan has none. */
  stunned: StunnedRecord | null;
  sharedBreakdowns: SharedBreakdownRecord[];
  masses: MassRecord;
  /** Crates standing in lairage; null without loads. */
  lairage: QueueRecord | null;
  traces: Traces | null;
  /** Only on request; null also when the day did not end by itself. */
  binding: BindingRecord | null;
  /** Only on request. */
  perHead: HeadTable | null;
  /** Only on request; null also where the plan does not say where heads are stunned. */
  killStops: KillStopsRecord | null;
  /** Sections that were cleaned, in the order in which that began; absent where the plan names none. */
  cleaning?: SectionCleaning[];
  /** Of a week, for which the record of its first day stands: all of its days. Absent of a day alone. */
  week?: DaysRecord;
}

/** Several days run one into the other. */
export interface DaysRecord {
  /** By working day, as far as they were simulated. */
  days: DayRecord[];
  /** Loads of all days, in the order of days and plans; their times on the clock of the week. */
  lots: LotRecord[];
  orders: OrderRecord[];
  /**
   * "finished": every day ended by itself before the next one began. Else the last day of `days` did not: "overrun": it was
   * still at work when the next one was to begin; "ceiling" and "stuck" as of a day.
   */
  status: DayRecord["status"] | "overrun";
}

/**
 * What the heads (crates, for a crate step) that were left at a stage waited for: time (still at work, dwelling or on its
 * ride), people ("people": nobody of its crews is on duty; "more people": fewer than one position takes), a repair, a
 * place at the next stage, room in a vessel, the end of a pause, a gate, the hold for stunned heads. "hanging is over": heads that are not hung any
 * more by plan. "tomorrow": nobody takes heads out of the stage any more today.
 */
export const LEFT_REASONS = [
  "time",
  "people",
  "more people",
  "a repair",
  "the next stage",
  "a full vessel",
  "a pause",
  "a gate",
  "the hold before stunning",
  "hanging is over",
  "tomorrow",
] as const;

export interface LeftRecord {
  stage: string;
  /** Heads; crates for a crate step. */
  count: number;
  reason: (typeof LEFT_REASONS)[number];
  /** Crews that work or repair there, or the full vessels; empty for the other reasons. */
  of: string[];
}

/**
 * What the time was owed to: seconds by cause at each stage, only those that are not 0, in line order within each cause.
 * They add up to the time from the day's start (or the end of the warm-up) to rounding.
 */
export interface BindingRecord {
  /** Up to `finishSeconds`. */
  day: BoundSeconds[];
  /** Up to `workFinishSeconds`; null in a run whose supply never ends, and when hanging closed after the last work. */
  work: BoundSeconds[] | null;
  bottleneck: BottleneckRecord;
}

/**
 * The momentary bottleneck (Roser, Nakano and Tanaka 2002). Each position of a station is a machine of its own, active
 * while it works or is down. Our extension: a dwell stage is active while it is full and its first head still dwells, a
 * chain while it moves and a head waits to be hung on it.
 */
export interface BottleneckRecord {
  /** By stage: share of the time up to the end of work as the sole bottleneck, and as one of those between which it shifts. */
  shares: { stage: string; sole: number; shifting: number }[];
  /** Only with traces. Two or more stages: shifting between them. */
  spans: { fromSeconds: number; toSeconds: number; stages: string[] }[] | null;
}

export interface BoundSeconds extends PathCell {
  seconds: number;
}

/** One row per head in hanging order. */
export interface HeadTable {
  heads: number;
  /** times[(head * stages.length + stage) * 4 + moment], moments entry, start, end, exit; NaN where it never passed. */
  times: Float64Array;
  /** Index into the keys of `heads.out`, -1 while on the line. */
  destinations: Int32Array;
  /** Index into `loads`, -1 without loads. */
  loads: Int32Array;
  arrived: Float64Array;
  /** How often it was stunned again; 1 where it was stuck at its place, before its sticking station. */
  stunnedAgain: Uint8Array;
  stuckThere: Uint8Array;
}

/** Heads that waited too long after their stunning: how many times one was stunned again, and how many were stuck where they were. */
export interface StunnedRecord {
  stunnedAgain: number;
  stuckThere: number;
}

export interface HeadCounts {
  arrived: number;
  hung: number;
  /** By destination: "carcass" (went the whole way) and every name that the plan's removals use. */
  out: Record<string, number>;
  turnedAway: number;
  /** Left by the day before: heads in crates, and heads on the line. Not counted among those that arrived. */
  fromBefore: { inLairage: number; onLine: number };
  inLairage: number;
  onLine: number;
}

export interface StageRecord {
  name: string;
  section: string;
  kind: StepKind;
  /** Places before the positions (Infinity: no limit); for a dwell stage its places. */
  places: number;
  positions: number;
  /** Heads (crates, for a crate step) whose work ended here. */
  processed: number;
  /** Heads waiting in the buffer; for a dwell stage, all heads present. */
  queue: QueueRecord;
  /** Position-seconds in each of STATES; they add up to positions x time watched (dwell without limit: empty). */
  stateSeconds: number[];
  /** Null when no head (crate) could reach it. */
  ownTime: OwnTime | null;
  stops: number;
  /** Of the stops, planned replacements; and times that a position changed over to another lot. Absent where the plan has none. */
  replacements?: number;
  changeovers?: number;
  /** Heads that passed unworked (weight outside the machine's range), left a window unfinished, or were sent elsewhere. */
  unworked: number;
  unfinished: number;
  diverted: number;
  /** Seconds in which the first waiting head was held back by a gate or a due stop. */
  heldSeconds: number;
  /** Heat taken out of the carcasses by a computed chilling stage, joules; 0 elsewhere. */
  heatJoules: number;
}

/**
 * The time in which a stage could have had something to do: from when its first head (crate) came to when its last one left,
 * or to the end of the time watched while another could still come. A stage beside the line, to which heads come only
 * when they are sent aside, has the time of the stages that send them. Crate steps that bring crates to the hanging
 * point end with hanging.
 */
export interface OwnTime {
  fromSeconds: number;
  toSeconds: number;
  /**
   * Position-seconds in each of STATES; they add up to positions x (to - from). Hours in which nobody may work there by
   * plan are "on break" here whatever the positions were left in, but for work that is finished into them.
   */
  stateSeconds: number[];
}

export const KILL_STOP_CAUSES = [
  "breakdown",
  "chain stands",
  "planned break",
  "nobody there",
  "full behind",
  "full vessel",
] as const;

/** Why the kill line stands: the cause, the step that stands (of "full behind" the stage that holds it up), and more about it. */
export interface KillStopReason {
  cause: (typeof KILL_STOP_CAUSES)[number];
  where: string;
  /** The breakdown's or vessel's name, what the stage behind waits for, the kind of absence; "" where there is no more to say. */
  what: string;
}

/** Stops that a day's record lists; the others are counted. */
export const MAX_KILL_STOPS = 200;

/**
 * The stops of the kill line (everything from stunning to the end of bleeding) on one day; what counts as one stands in
 * sim/day/engine/README.md. The sums are over all stops, those beyond the list included.
 */
export interface KillStopsRecord {
  /** Names of the steps, in line order. */
  stunning: string[];
  sticking: string[];
  bleeding: string[];
  steps: string[];
  /** A shorter stand is no stop; how many there were, and how long together. */
  leastSeconds: number;
  shorter: { count: number; seconds: number };
  count: number;
  seconds: number;
  longestSeconds: number;
  /** Of these: stops that did not begin as a planned break. */
  unplanned: { count: number; seconds: number; longestSeconds: number };
  /** Heads caught in a stop between stunning and sticking; those caught in two are counted twice. */
  caught: number;
  /** The longest that such a head waited from the end of stunning to the start of sticking; 0 when none was caught. */
  worstWaitSeconds: number;
  /** Of the heads caught: never stuck, because they left the line before it or the day ended. */
  neverStuck: number;
  /** The first stops of the day, in order; at most MAX_KILL_STOPS. */
  stops: KillStop[];
  /** Stops beyond those of the list. */
  leftOut: number;
}

/** Seconds after the day's start; heads. */
export interface KillStop {
  fromSeconds: number;
  toSeconds: number;
  /** In the order in which they came up, each once; the first one began the stop. */
  reasons: KillStopReason[];
  /** Stunned and not yet stuck: when it began, and at most during it. */
  stunned: number;
  stunnedMost: number;
  /** Stuck and not yet through bleeding: the same. */
  bleeding: number;
  bleedingMost: number;
  /** As for the whole day. */
  caught: number;
  longestWaitSeconds: number;
  neverStuck: number;
  /** False: the day ended, or nothing more was to come, while the line stood. */
  startedAgain: boolean;
}

/** Kilograms. Live + from before = by-products + out (by destination) + still on the line, to rounding. */
export interface MassRecord {
  liveKg: number;
  /** On the line when the day began; absent where nothing was. */
  fromBeforeKg?: number;
  byProductsKg: Record<string, number>;
  outKg: Record<string, number>;
  onLineKg: number;
  /** Live weight of the heads that left as carcasses. */
  carcassLiveKg: number;
}

export interface ChainRecord {
  name: string;
  /** Shackles that passed the loading point from the first head hung to the last, and how many of them stayed empty. */
  shackles: number;
  gaps: number;
  /** Of the gaps: no shackle was back from the washer. */
  missingShackles: number;
  /** Seconds the chain stood: a station was down, a head was not finished, the unloading point was full, a planned pause. */
  standSeconds: { down: number; unfinished: number; unloading: number; pause: number };
}

export interface GateRecord {
  name: string;
  atMost: number;
  mean: number;
  max: number;
}

export interface VesselRecord {
  name: string;
  emptied: number;
  maxKg: number;
  spilledKg: number;
  /** Seconds it was full and its stages stood. */
  fullSeconds: number;
}

/** One cause that stops several stages; they are all down as long as it lasts. */
export interface SharedBreakdownRecord {
  name: string;
  /** Names of the stages that it stops, in line order. */
  stages: string[];
  stops: number;
  /** From each stop until it was repaired, the wait for somebody who repairs included. */
  downSeconds: number;
}

/** When a section was cleaned, by so many people; seconds after the day's start. */
export interface SectionCleaning {
  section: string;
  people: number;
  fromSeconds: number;
  toSeconds: number;
}

export interface QueueRecord {
  mean: number;
  max: number;
}

export interface CrewRecord {
  name: string;
  /** When its people last ended some work; 0 where there was none. */
  lastWorkSeconds: number;
  peopleMax: number;
  /** People there by shift, in the order of the plan's shifts; who is absent that day, or works with another crew, is not counted. */
  people: number[];
  /** People of other crews who stepped in, by shift; absent where nobody did. */
  helpers?: { crew: string; people: number[] }[];
  /** Who is absent that day, by shift. */
  absent: number[];
  /** Person-seconds with work in hand: those of `work` and `jobSeconds` together. */
  busySeconds: number;
  work: CrewWork[];
  /** Person-seconds at repairs and at emptying vessels. */
  jobSeconds: number;
  /** Person-seconds on duty: present by shift, not on break, up to the end of work (or of the crew's own last job). */
  presentSeconds: number;
}

/**
 * What a crew did at one of its stations, in person-seconds. Over all crews of a station, `seconds` = people per position x
 * the station's working position-seconds + `repairSeconds`. Walking to a station counts as work there.
 */
export interface CrewWork {
  stage: string;
  seconds: number;
  /** Of these: with work in hand that waited for the machine's repair. */
  repairSeconds: number;
}

export interface SectionRecord {
  name: string;
  wip: QueueRecord;
}

export interface LimitRecord {
  name: string;
  minSeconds: number | null;
  maxSeconds: number | null;
  tally: Tally;
  /** Heads outside the limit. */
  beyond: number;
}

/** A distribution kept in bounded memory: moments are exact, quantiles good to 0.4 % of their value. */
export interface Tally {
  count: number;
  mean: number;
  sd: number;
  min: number;
  max: number;
  quantiles: { p05: number; p25: number; p50: number; p75: number; p90: number; p95: number; p99: number };
  /** Ascending, not overlapping, empty ones left out; relative width under 1 %. */
  bins: { from: number; to: number; count: number }[];
}

export interface LoadRecord {
  name: string;
  heads: number;
  crates: number;
  dueSeconds: number;
  /** Null for a lorry that does not come. */
  arrivedSeconds: number | null;
  /** Last crate off the lorry; null when some stayed on it. */
  unloadedSeconds: number | null;
  /** Last head taken out of its crates; null when some stayed in lairage. */
  emptiedSeconds: number | null;
  /** Last of its crates washed and ready; null when some are not, or when the plan does not follow empty crates. */
  washedSeconds: number | null;
  /** The lorry left: at once when unloaded, or with its empty crates when the plan follows them; null while it waits. */
  leftSeconds: number | null;
}

export interface Traces {
  /** One per stage of `stages`, same order: heads waiting (dwell: present; crate step: crates waiting). */
  queues: StepTrace[];
  /** One per section, same order: heads in it. */
  wip: StepTrace[];
  /** Carcasses out so far. */
  out: StepTrace;
  /** Live heads arrived so far. */
  arrived: StepTrace;
  /** Heads whose work at the first stage of the line is over, so far. */
  hung: StepTrace;
  /** One per dwell stage: heads that came into it so far. */
  entered: StepTrace[];
  /** One per crew: people with work in hand, and people on duty up to the end of work. */
  crews: CrewTrace[];
  /** One per stage: seconds in each state by time bin. */
  states: StateTrace[];
}

export interface CrewTrace {
  name: string;
  busy: StepTrace;
  present: StepTrace;
}

/**
 * A step function of time. `exact`: value `values[i]` holds from `times[i]` on. `binned`: bin i covers
 * [i, i + 1) x `binSeconds`; every value taken in it lies in low[i]..high[i], both of which it took, so no peak is lost.
 */
export type StepTrace =
  | { kind: "exact"; name: string; endSeconds: number; times: number[]; values: number[] }
  | {
      kind: "binned";
      name: string;
      endSeconds: number;
      binSeconds: number;
      low: number[];
      high: number[];
      mean: number[];
    };

/** seconds[bin * STATES.length + state], position-seconds; bin i covers [i, i + 1) x `binSeconds`. */
export interface StateTrace {
  name: string;
  endSeconds: number;
  binSeconds: number;
  seconds: number[];
}

/** One load from its arrival to the last head's leaving, over all days; seconds on the clock of the days' starts: after midnight of a week's first day. */
export interface LotRecord {
  name: string;
  /** The working day that it was due on. */
  day: number;
  heads: number;
  dueSeconds: number;
  /** Null where that has not happened. */
  arrivedSeconds: number | null;
  firstHungSeconds: number | null;
  lastHungSeconds: number | null;
  lastOutSeconds: number | null;
  hung: number;
  liveKg: number;
  /** All its heads were taken off. */
  withdrawn: boolean;
  /** By destination: heads, and kilograms that left with them. */
  out: Record<string, number>;
  outKg: Record<string, number>;
}

/** An order as the engine sees it: carcasses or kilograms (the other is null), in the order of their times. */
export interface PlacedOrder {
  name: string;
  bySeconds: number;
  carcasses: number | null;
  kilograms: number | null;
}

/** When an order was filled, null when it was not; and how much of it was missing at its time, in its own measure. */
export interface OrderRecord extends PlacedOrder {
  filledSeconds: number | null;
  short: number;
}
