import type { Varying } from "../random/index.ts";

/**
 * A checked plan: plain data in SI units (seconds, kilograms, heads). Times are seconds after the day's start
 * (`day.startClockSeconds`, seconds after midnight). `Infinity` stands for "no limit", `null` for "not in this plan".
 */
export interface Plan {
  name: string;
  notes: string;
  sources: SourceNote[];
  day: DayPlan;
  supply: Supply;
  /** How crates get from the lorry to the hanging point; null unless the supply comes in loads. */
  liveHandling: LiveHandling | null;
  crews: Crew[];
  /** Stages in the order heads pass them. The first one takes heads out of the crates. */
  line: Stage[];
  limits: TimeLimit[];
  /** Heads per hour the owner wants, or null. Drawn and reported, never enforced. */
  targetHeadsPerSecond: number | null;
}

/** Where figures come from; `path` "" speaks for the whole plan, a longer path for everything below it. */
export interface SourceNote {
  path: string;
  kind: SourceKind;
  note: string;
}

export const SOURCE_KINDS = [
  "measured",
  "maker's figure",
  "published",
  "common practice",
  "assumed",
  "invented",
] as const;
export type SourceKind = (typeof SOURCE_KINDS)[number];

export interface DayPlan {
  startClockSeconds: number;
  shifts: Shift[];
  breaks: Break[];
  closing: Closing;
  /** The run is stopped, and says so, when the simulated clock passes this many seconds. */
  ceilingSeconds: number;
}

export interface Shift {
  name: string;
  fromSeconds: number;
  toSeconds: number;
}

/** A planned pause of the named crews and machines-with-pauses; a head in hand is finished first. */
export interface Break {
  name: string;
  atSeconds: number;
  lengthSeconds: number;
  /** Names of the crews that go; every crew of the plan when the file names none. */
  crews: string[];
  /** By crew name: seconds after `atSeconds` at which that crew goes (and after the break's end comes back). */
  laterSeconds: Record<string, number>;
  /** Names of the stages whose machines pause; none when the file names none. */
  stages: string[];
}

/**
 * `finish`: everything that arrived is processed, with overtime after the last shift.
 * `stop hanging`: no head is hung after `atSeconds`; what hangs is finished, the rest stays in lairage.
 */
export type Closing = { rule: "finish" } | { rule: "stop hanging"; atSeconds: number };

export type Supply =
  | { kind: "loads"; loads: Load[] }
  /** Single heads arriving one by one; `whenFull` says what happens when the first stage has no place. */
  | { kind: "stream"; interarrival: Varying; heads: number; whenFull: "wait" | "turn away" }
  /** The first stage never starves: a capacity run of so many heads. */
  | { kind: "saturated"; heads: number };

/** One lorry's crates. */
export interface Load {
  name: string;
  atSeconds: number;
  /** Added to `atSeconds`; null for a lorry that is always on time. */
  delay: Varying | null;
  crates: number;
  headsPerCrate: number;
  deadOnArrivalShare: number;
  liveWeightKg: Varying;
}

/** Crates: lorry -> unloading -> lairage -> feeding -> hanging point, where they are emptied head by head. */
export interface LiveHandling {
  unloading: CrateStep;
  lairageCrates: number;
  feeding: CrateStep;
  /** Crates that stand at the hanging point at once, the one being emptied included. */
  cratesAtHanging: number;
}

export interface CrateStep {
  positions: number;
  secondsPerCrate: Varying;
  crew: string | null;
  peoplePerPosition: number;
  breakdowns: Breakdown[];
}

/** A pool of people; `people` present in each shift (same order as `day.shifts`). */
export interface Crew {
  name: string;
  people: number[];
  /** Which waiting station gets a freed person. */
  rule: CrewRule;
}

export const CREW_RULES = ["furthest downstream", "longest queue", "fixed order"] as const;
export type CrewRule = (typeof CREW_RULES)[number];

export type Stage = Station | Dwell;

interface StageBase {
  name: string;
  /** Stretch of the line this stage is counted in for WIP (say "kill", "dressing", "chilling"). */
  section: string;
  /** Time from leaving this stage to reaching the next; null for none. Heads keep their order. */
  travelSeconds: Varying | null;
}

export interface Station extends StageBase {
  kind: "station";
  work: "machine" | "manual";
  /** Places before the positions; Infinity for no limit. */
  buffer: number;
  positions: number;
  cycleSeconds: Varying;
  /** Crew that holds each position for the whole cycle; null for an unattended machine. */
  crew: string | null;
  peoplePerPosition: number;
  breakdowns: Breakdown[];
  removals: Removal[];
}

/** Holds up to `places` heads side by side for at least the dwell time; first in, first out; blocks behind. */
export interface Dwell extends StageBase {
  kind: "dwell";
  places: number;
  dwellSeconds: Varying;
  removals: Removal[];
}

/** A share of the heads that leaves the line for good when the stage's work on them ends. */
export interface Removal {
  as: string;
  share: number;
}

export interface Breakdown {
  name: string;
  /** Which clock the uptime runs on: only while the position works, or always. */
  clock: "running" | "calendar";
  /** One position at a time, or all positions of the station together. */
  scope: "position" | "station";
  uptimeSeconds: Varying;
  repairSeconds: Varying;
}

export const MOMENTS = ["entry", "start", "end", "exit"] as const;
/** entry: joins the stage's buffer; start / end: of its work; exit: frees its place there. */
export type Moment = (typeof MOMENTS)[number];
/** `stage` null: the head's load arrived (moment "entry") or it left the line (moment "exit"). */
export interface Point {
  stage: string | null;
  moment: Moment;
}

/** A watched time between two points of a head's way. */
export interface TimeLimit {
  name: string;
  from: Point;
  to: Point;
  minSeconds: number | null;
  maxSeconds: number | null;
  /** Where the limit comes from: the law, guide or house rule, in words. */
  source: string;
}
