import type { Varying } from "../../maths/varying/index.ts";
import type { StageKind } from "../../text/kinds/index.ts";
import type { Site } from "./site.ts";

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
  /** Breakdowns that stop several stages at once: a control board, the power, a compressor. */
  sharedBreakdowns: SharedBreakdown[];
  /** Stages in the order heads pass them. The first one takes heads out of the crates. */
  line: Stage[];
  limits: TimeLimit[];
  gates: Gate[];
  /** What is done so that no stunned animal waits for its sticking; null for nothing. */
  stunned: Stunned | null;
  /** Vessels that by-products run into; the stages say what runs where. */
  vessels: Vessel[];
  /** What the plant uses beside its stages; null when the plan tells nothing of it. */
  utilities: PlantUtilities | null;
  /** Building and services, for drawing and connections; absent where the plan says nothing of them. No day depends on it. */
  site?: Site;
  /** What it all costs and earns; null when the plan gives no money. */
  money: Money | null;
  /** What stays on the carcass, in words: a dressing percentage means nothing without it. Empty where the next says it. */
  dressing: string;
  /** What is sold as a carcass; null when the plan does not say. */
  presentation: Presentation | null;
  /** Shares of the live weight at slaughter that add up to 1; null when the plan gives none. */
  bodyParts: BodyParts | null;
  /** Heads per hour the owner wants, or null. Drawn and reported, never enforced. */
  targetHeadsPerSecond: number | null;
  /** What is there when the day begins, or the first day of a week; absent: nothing. */
  atStart?: AtStart;
  /** Days one after another; absent where the plan is of one day alone. */
  week?: Week;
  /** Figures that nobody knows exactly; absent where the plan names none. A day takes them as written. */
  uncertain?: UncertainFigure[];
}

/** Crates in lairage and carcasses in chillers, each so many seconds there when the day's clock starts; longest first. */
export interface AtStart {
  crates: (StartedLot & { crates: number; headsPerCrate: number })[];
  /** `leftShare`: of the live weight, what the stages before leave of a head. */
  carcasses: (StartedLot & { in: string; heads: number; leftShare: number })[];
}

interface StartedLot {
  /** Null: a lot of its own. */
  lot: string | null;
  forSeconds: number;
  liveWeightKg: Varying;
}

/** A figure that nobody knows exactly, as a multiple of what the plan says. */
export interface UncertainFigure {
  name: string;
  /** Where it stands in the plan's file; several places go together. */
  paths: string[];
  /** Of `draws` each row is as likely: one factor for all paths, or one for each. */
  factor: UncertainFactor;
  kind: "guess" | "measured";
  /** How many readings it rests on; null where the plan does not say. */
  readings: number | null;
  /** Who guessed it, or how it was measured. */
  note: string;
}

export type UncertainFactor =
  | Extract<Varying, { family: "uniform" | "triangular" | "lognormal" | "normal" }>
  | { family: "draws"; rows: number[][] };

/** A calendar of days; all else in the plan is the usual day. */
export interface Week {
  /** The date of the first day, "2031-03-17"; null where the plan gives none. */
  begins: string | null;
  /** In the order of the calendar, those without work included. */
  days: WeekDay[];
  /** The first days are simulated so that the others begin as a running plant does, and are not counted. */
  warmUpDays: number;
  /** Machines begin every day as new; else their uptimes go on from day to day. */
  machinesAsNew: boolean;
  orders: Order[];
}

export interface WeekDay {
  name: string;
  /** What is done on it; null for a day without work. */
  plan: Plan | null;
  /** Seconds from midnight of the calendar's first day to the start of this day's clock; for a day without work to its midnight. */
  startSeconds: number;
}

/** Carcasses promised by a time, as a number or by weight; the other one is null. */
export interface Order {
  name: string;
  /** Seconds after midnight of the calendar's first day. */
  bySeconds: number;
  carcasses: number | null;
  kilograms: number | null;
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
  /** Checks before the first head of the day: crews are there but begin so much after the first shift's start. */
  preStartSeconds: number;
  /** Cleaning after the last work; null for none. */
  cleaning: Cleaning | null;
  /** No planned stop may leave a head on this stretch; null when the plan names none. */
  safeStop: SafeStop | null;
  /** Stages whose heads may stay until the next day; only in a day of a week. */
  overnight?: Overnight[];
  /** The run is stopped, and says so, when the simulated clock passes this many seconds. */
  ceilingSeconds: number;
}

/** `seconds` after the last work; the sections as soon as each is empty, absent where the plan names none. */
export interface Cleaning {
  seconds: number;
  crews: string[];
  sections?: { section: string; seconds: number; people: number }[];
}

export interface Shift {
  name: string;
  fromSeconds: number;
  toSeconds: number;
}

/** A dwell stage that heads leave until this time of the day; who is in it then, or comes later, stays for the next day. */
export interface Overnight {
  stage: string;
  untilSeconds: number;
}

/**
 * The stretch that must be empty before anybody who works on it leaves for a break (from stunning to the end of bleeding,
 * say). When a planned stop is due, no head begins the stretch any more; its crews go when the last head is through.
 */
export interface SafeStop {
  /** Stage whose starting is held back when a stop is due. */
  from: string;
  /** A head is through at the end of this stage. */
  to: string;
}

/** What the shares of rest allowances are taken of. */
export const ALLOWANCE_BASES = ["basic time", "shift"] as const;

/** When a break ends for somebody who had a head to finish first. */
export const BREAK_ENDS = ["after its length", "at its time"] as const;

/** A planned pause of the named crews and machines-with-pauses; a head in hand is finished first. */
export interface Break {
  name: string;
  atSeconds: number;
  lengthSeconds: number;
  /** Names of the crews that go; every crew of the plan when the file names none. */
  crews: string[];
  /** Whoever leaves late comes back late, or when the break ends for all. */
  ends: (typeof BREAK_ENDS)[number];
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
  | { kind: "stream"; interarrival: Varying; heads: number; whenFull: "wait" | "turn away"; liveWeightKg: Varying }
  /** The first stage never starves: a capacity run of so many heads. */
  | { kind: "saturated"; heads: number; liveWeightKg: Varying };

/** One lorry's crates. */
export interface Load {
  name: string;
  /** The farm or lot that its animals are of; absent: it is a lot of its own. */
  lot?: string;
  /** The whole load may be withdrawn: all its heads are taken off at the end of a stage; absent: it never is. */
  withdrawn?: Withdrawal;
  /** Its carcasses hang apart in that stage until then; absent: they are not held. */
  held?: { in: string; untilSeconds: number };
  atSeconds: number;
  /** Added to `atSeconds`; null for a lorry that is always on time. */
  delay: Varying | null;
  /** Chance that the lorry comes at all. */
  comesShare: number;
  crates: number;
  headsPerCrate: number;
  deadOnArrivalShare: number;
  liveWeightKg: Varying;
}

/** With this chance, drawn once for the load, every head of it is taken off at the end of the stage and counted `as` that removal. */
export interface Withdrawal {
  chance: number;
  at: string;
  as: string;
}

export const WAYS = ["hand-slid", "lift", "automatic"] as const;
/**
 * hand-slid: crates slid by hand on rollers and hosed down. lift: a lift presents the top crate of a stack, one operator
 * pushes crates, an in-line washer, restacking by hand. automatic: pallets by fork-lift onto a feed conveyor, destacking
 * one level at a time, washer, restacking, pallets out.
 */
export type Way = (typeof WAYS)[number];

/**
 * Crates: lorry -> unloading -> lairage -> feeding -> hanging point, where they are emptied head by head -> washing ->
 * restacking -> (pallets out) -> lorry. `toHanging` has the steps before the hanging point, the lairage being the places
 * before the last of them; `back` those after it, empty when the plan does not follow the empty crates.
 */
export interface LiveHandling {
  way: Way;
  toHanging: CrateStep[];
  back: CrateStep[];
  /** Crates that stand at the hanging point at once, the one being emptied included. */
  cratesAtHanging: number;
  /** A finite number of crates in circulation; null for as many as the loads bring. */
  fleet: Fleet | null;
}

/** A lorry comes only when the fleet has crates for it: those that left the plant are back full after `awaySeconds`. */
export interface Fleet {
  crates: number;
  awaySeconds: number;
}

/** A work step on crates. It takes up to `cratesPerCycle` of those waiting (a stack, a level, a pallet) in one cycle. */
export interface CrateStep {
  name: string;
  /** Crates that can wait before it; Infinity for no limit. */
  places: number;
  cratesPerCycle: number;
  positions: number;
  secondsPerCycle: Varying;
  utilities: Utilities;
  /** Share of the wash water that is used again; 0 without. */
  waterReusedShare: number;
  /** Crews that may do it, the preferred one first; empty for none. */
  crews: string[];
  peoplePerPosition: number;
  breakdowns: Breakdown[];
}

/** A pool of people; `people` present in each shift (same order as `day.shifts`). */
export interface Crew {
  name: string;
  people: number[];
  /** Which waiting station gets a freed person. */
  rule: CrewRule;
  /** Time to walk to another station than the last one; counts as work of the person and of the position. */
  walkSeconds: number;
  /** Each person is missing for the whole day with this probability, independently. */
  absentShare: number;
  /** Its people change places by rule, as breaks of their own say; absent: they do not. */
  rotates?: true;
  /** Who steps in where too few of them are there; absent: nobody. */
  cover?: Cover;
  /** Goes home when its own work is done, in overtime if need be; absent: with the day's last work, like everybody. */
  leavesOnItsOwn?: true;
  /** Pay per person-second; null without money. */
  payPerSecond: number | null;
}

/**
 * Where fewer than `atLeast` (by shift) of a crew are there, people of the first crew of `by` that can spare somebody work
 * with it for the shift. A crew keeps the people that its own work takes.
 */
export interface Cover {
  by: { crew: string; keeps: number }[];
  atLeast: number[];
}

export const CREW_RULES = ["furthest downstream", "longest queue", "fixed order"] as const;
export type CrewRule = (typeof CREW_RULES)[number];

/** The stage of each kind; one without an interface of its own yet has what all stages have. */
interface StageOf extends StageBases {
  station: Station;
  dwell: Dwell;
  chain: Chain;
}
type StageBases = { [K in StageKind]: StageBase & { kind: K } };

export type Stage = StageOf[StageKind];

interface StageBase {
  name: string;
  /** Stretch of the line this stage is counted in for WIP (say "kill", "dressing", "chilling"). */
  section: string;
  /** Time from leaving this stage to reaching the next; null for none. Heads keep their order. */
  travelSeconds: Varying | null;
  /** Where heads go from here; null for the next stage of the line that is not off the line. */
  next: string | null;
  /** Off the line: heads come here only when another stage sends them. */
  offLine: boolean;
  removals: Removal[];
  diversions: Diversion[];
  byProducts: ByProduct[];
  utilities: Utilities;
  /** Purchase and life; null when no capital is charged. */
  capital: Capital | null;
  /** Recorded and reported, never computed or recommended: say the maker's minimum stunning current and time. */
  settings: Setting[];
}

/** A share of the heads that is sent to another stage when the work here ends; heads that were sent once are not sent again. */
export interface Diversion {
  to: string;
  /** With `shareBy` the most that it gives. */
  share: number;
  shareBy?: ShareBy;
}

/** How a share runs between its points; before the first and after the last of them it stays as it is there. */
export const SHARE_SHAPES = ["a line", "steps"] as const;

/** A share that depends on the head: on its live weight, or on the time it took between two points of its way. */
export interface ShareBy {
  of: { kind: "live weight" } | { kind: "time"; from: Point; to: Point };
  between: (typeof SHARE_SHAPES)[number];
  /** Kilograms or seconds, ascending, and the shares there; with steps each holds from there on. */
  points: { at: number; share: number }[];
}

export interface Setting {
  name: string;
  value: string;
  source: string;
}

/** What is taken off the head when the work here ends, into a vessel or (null) away at once: by-products, drip, cuts. */
export interface ByProduct {
  name: string;
  share: number;
  of: "live weight" | "what is left";
  vessel: string | null;
  /** What is lost in the chiller: a carcass weighed hot still has it. */
  chillLoss?: true;
}

/** Parts that a stage can take off; whatever is left is "rest". */
export const REMOVABLE_PARTS = [
  "blood",
  "skin",
  "head",
  "forePaws",
  "hindPaws",
  "gut",
  "liver",
  "kidneys",
  "heartAndLungs",
] as const;
export type RemovablePart = (typeof REMOVABLE_PARTS)[number];
export type BodyParts = Record<RemovablePart | "rest", number>;

/** Stands among parts for what drips and dries away in the chiller. */
export const CHILL_LOSS = "chillLoss";

export const WEIGHED = ["hot", "cold"] as const;
export const LIVE_WEIGHTS = ["farm", "slaughter"] as const;

/** What a yield has to say of itself before it can be compared with another. */
export interface YieldTags {
  head: "on" | "off";
  paws: "on" | "off";
  weighed: (typeof WEIGHED)[number];
  liveWeight: (typeof LIVE_WEIGHTS)[number];
}

/** What is sold as a carcass. */
export interface Presentation extends YieldTags {
  liver: "on" | "off";
  kidneys: "on" | "off";
  heartAndLungs: "on" | "off";
  /** Share of the hot carcass lost in the chiller; null when not given. */
  chillLossShare: number | null;
  /** Share of the weight at the farm lost in transport and fasting; null when not given. */
  journeyLossShare: number | null;
  /** A yield the line is held against. */
  yield: (YieldTags & { share: number }) | null;
}

/** Water in litres, energy in kilowatt-hours. */
export interface Utilities {
  waterPerHead: number;
  waterPerHour: number;
  energyPerHead: number;
  powerKilowatts: number;
}

/** When a consumer of the plant uses what it uses: while the line works, while it is cleaned, or 24 hours. */
export const DURING = ["work", "cleaning", "all day"] as const;

/** Hot water, compressed air, ventilation, and what leaves through the drains. */
export interface PlantUtilities {
  coldCelsius: number;
  /** Fuel for each unit of heat in hot water: what is not recovered, by the efficiency. */
  fuelPerHeat: number;
  /** Electricity for a cubic metre of free air. */
  kilowattHoursPerAir: number;
  /** Chemical oxygen demand, kg for each litre of waste water; null when not given. */
  codPerLitre: number | null;
  /** What of it is taken out on the site. */
  codRemovedShare: number;
  consumers: Consumer[];
}

/** Litres, degrees Celsius, cubic metres of free air an hour, kilowatts. */
export interface Consumer {
  name: string;
  during: (typeof DURING)[number];
  waterPerHead: number;
  waterPerHour: number;
  waterPerDay: number;
  /** Temperature of its water; null for cold water. */
  celsius: number | null;
  airPerHour: number;
  powerKilowatts: number;
}

export interface Capital {
  price: number;
  lifeYears: number;
  daysPerYear: number;
}

/**
 * From this hour until the next one of the list work goes `speed` times as fast as written, and no faster than so many heads
 * per second pass with every position at work.
 */
export interface Pace {
  fromSeconds: number;
  speed: number;
  /** Null for no upper rate. */
  mostPerSecond: number | null;
}

export interface Station extends StageBase {
  kind: "station";
  work: "machine" | "manual";
  /** Places before the positions; Infinity for no limit. */
  buffer: number;
  positions: number;
  cycleSeconds: Varying;
  /** In the order of the hours; before the first one, and when empty, as written. */
  pace: Pace[];
  /** The cycle is multiplied by 1 + perKg x (live weight - atKg), never below a tenth; null for no dependence. */
  weightFactor: { perKg: number; atKg: number } | null;
  /** Time that a position takes before the first head of another lot than its last one; absent for none. */
  changeoverSeconds?: number;
  /** How the cycle falls to what is written while its people learn; absent where they know it. */
  learning?: Learning;
  /** Heads outside pass unworked to the stage named `else`; null for a station that takes every weight. */
  weights: { fromKg: number; toKg: number; else: string } | null;
  /** Crews that may hold a position for the whole cycle, the preferred one first; empty for an unattended machine. */
  crews: string[];
  peoplePerPosition: number;
  breakdowns: Breakdown[];
}

/** Holds up to `places` heads side by side for at least the dwell time; first in, first out; blocks behind. */
export interface Dwell extends StageBase {
  kind: "dwell";
  places: number;
  /** Heads on one hook (1, 2 or 4): a hook is free again when its last head has left. `places` counts heads. */
  headsPerHook: number;
  /** Drawn per head, or by conduction from the head's weight. */
  dwell: { kind: "drawn"; seconds: Varying } | { kind: "chilling"; chilling: Chilling };
  /** What its electricity follows from, besides the heat of the carcasses; absent where the plan gives the power. */
  cooling?: Cooling;
}

/**
 * The unit reading of Wright's law (Crawford): each doubling of the heads done at a position multiplies the time for one by
 * `rate`, until `known` heads are done and the cycle is as written.
 */
export interface Learning {
  rate: number;
  known: number;
  /** Heads done at each position before the plan's first day; at least 1. */
  done: number;
}

/** A cold room: heat that comes in whether carcasses do or not, and what taking heat out costs. */
export interface Cooling {
  /** Heat taken out for each unit of electricity, fans and lights apart. */
  cop: number;
  /** Electricity, which comes back as heat in the room. */
  fanKilowatts: number;
  lightKilowatts: number;
  /** Heat. Doors: mean over the time that the room is kept cold. */
  wallKilowatts: number;
  peopleKilowatts: number;
  doorKilowatts: number;
}

/** What the computed chilling time starts from; the carcass is a cylinder of the given length. Temperatures in Celsius. */
export interface Chilling {
  startCelsius: number;
  airCelsius: number;
  coreCelsius: number;
  airMetresPerSecond: number;
  carcassLengthMetres: number;
  /** Carcass weight as a share of live weight. */
  carcassShare: number;
  /** W/(m K), kg/m3, J/(kg K). */
  conductivity: number;
  density: number;
  specificHeat: number;
}

/**
 * A moving overhead chain. Shackles pass the loading point one pitch apart; heads ride through the windows of the
 * stations on it. It stands while any station on it is down, while a head may not leave a window unfinished, and while
 * the head at its end has nowhere to go.
 */
export interface Chain extends StageBase {
  kind: "chain";
  /** Shackles from the loading to the unloading point (length / pitch). */
  places: number;
  /** pitch / speed. */
  secondsPerShackle: number;
  /** Metres from shackle to shackle; absent where the chain was not read from a file. */
  pitchMetres?: number;
  pace: Pace[];
  /** Detachable shackles in circulation and their way back through the washer; null for a closed chain. */
  shackles: { count: number; backSeconds: number } | null;
  /** In the order in which heads pass them; windows do not overlap. */
  stations: ChainStation[];
  /** Where heads go that passed a window unfinished; null when every station stops the chain instead. */
  unfinishedTo: string | null;
}

export interface ChainStation {
  name: string;
  /** Shackles from the loading point to the window's first one, and how many the window has. */
  at: number;
  window: number;
  ifUnfinished: "stop" | "pass";
  positions: number;
  cycleSeconds: Varying;
  pace: Pace[];
  weightFactor: { perKg: number; atKg: number } | null;
  /** Time that a position takes before the first head of another lot than its last one; absent for none. */
  changeoverSeconds?: number;
  /** How the cycle falls to what is written while its people learn; absent where they know it. */
  learning?: Learning;
  crews: string[];
  peoplePerPosition: number;
  breakdowns: Breakdown[];
  byProducts: ByProduct[];
  utilities: Utilities;
  capital: Capital | null;
  settings: Setting[];
}

/** A share of the heads that leaves the line for good when the stage's work on them ends. */
export interface Removal {
  as: string;
  /** With `shareBy` the most that it gives. */
  share: number;
  shareBy?: ShareBy;
}

export interface Breakdown {
  name: string;
  /** Which clock the uptime runs on: only while the position works, or always. */
  clock: "running" | "calendar";
  /** One position at a time, or all positions of the station together. */
  scope: "position" | "station";
  uptimeSeconds: Varying;
  repairSeconds: Varying;
  /** Crew that repairs it, one person for the whole repair, first come first served; null when help is always at hand. */
  crew: string | null;
  /** What becomes of the head in hand: worked on after the repair, or taken off unfinished to the stage's trim. */
  headInHand: "resume" | { to: string };
  /** The part is replaced, as planned, when it has run so long without a breakdown; absent where nobody does that. */
  replaced?: Replacement;
}

/** Age replacement (Barlow and Hunter 1960). */
export interface Replacement {
  afterSeconds: number;
  takesSeconds: number;
}

/** Which clock the uptime of a shared breakdown runs on. */
export const SHARED_CLOCKS = ["any running", "all running", "calendar"] as const;

/** One cause that stops several stages at the same moment, until it is repaired. Work in hand is resumed after it. */
export interface SharedBreakdown {
  name: string;
  /** Stations, on chains or not, chains and crate steps, by the names that results give them. */
  stops: string[];
  /** Uptime counts while at least one of them works (a chain: moves), while all of them do, or always. */
  clock: (typeof SHARED_CLOCKS)[number];
  uptimeSeconds: Varying;
  repairSeconds: Varying;
  /** Crew that repairs it, one person for the whole repair, first come first served; null when help is always at hand. */
  crew: string | null;
}

/** At most so many heads between two points; the head waits before the first one, never between them. */
export interface Gate {
  name: string;
  /** Stage whose start is held back. */
  from: string;
  to: Point;
  atMost: number;
}

/** What is done for a stunned head that waits for its sticking longer than it may. */
export const LATE_HELP = ["stun again", "stick there"] as const;

/** The care for animals between the station that stuns and the one that sticks. */
export interface Stunned {
  from: string;
  to: string;
  /** A head is stunned only when all that is known at that instant says that nothing will make it wait. */
  hold: boolean;
  late: LateHelp | null;
}

/** What is done for a head `afterSeconds` after the end of its stunning, unless it has been stuck by then. */
export interface LateHelp {
  afterSeconds: number;
  help: (typeof LATE_HELP)[number];
  takesSeconds: number;
  /** One person of this crew does it; null when somebody is always at hand. */
  crew: string | null;
}

/** Takes by-products in; emptied when full (or at `emptyAtKg`), which takes time and perhaps a person. */
export interface Vessel {
  name: string;
  capacityKg: number;
  emptyAtKg: number;
  emptyingSeconds: number;
  crew: string | null;
  /** Full: the stages that feed it stop, or it spills and the spill is counted. */
  whenFull: "stop" | "spill";
}

/** One currency. Prices per kilogram by product or by-product name ("carcass" is a name); negative for what costs money. */
export interface Money {
  currency: string;
  waterPerLitre: number;
  wasteWaterPerLitre: number;
  energyPerKilowattHour: number;
  /** Of what heats water. */
  fuelPerKilowattHour: number;
  /** Pay beyond the last shift is multiplied by this. */
  overtimeFactor: number;
  livePricePerKg: number | null;
  /** Null when the plan gives none. */
  plantCosts: PlantCosts | null;
  pricesPerKg: Record<string, number>;
}

/** What a plant costs beside work, water, energy, machines and animals; 0 where it is not given. */
export interface PlantCosts {
  daysPerYear: number;
  building: { price: number; lifeYears: number } | null;
  packagingPerCarcass: number;
  inspectionPerHead: number;
  inspectionPerSecond: number;
  /** Of by-products and heads without a price of their own. */
  wastePerKg: number;
  overheadPerYear: number;
  /** A year, of the price of machines and building. */
  maintenanceShare: number;
  loan: Loan | null;
}

/** Paid back in equal payments. */
export interface Loan {
  amount: number;
  interestPerYear: number;
  years: number;
  paymentsPerYear: number;
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
