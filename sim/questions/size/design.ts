import type { Way } from "../../asked/plan/index.ts";
import type { DayEstimate } from "../estimate/index.ts";
import type { AlternativeName } from "./alternatives.ts";
import type { Figure } from "./demand.ts";
import type { Zone } from "./zones.ts";

/** What a demand asks of a plant, part by part, and a first plan of it. SI units where no unit is named. */
export interface PlantDesign {
  name: string;
  /** Kind of plant. */
  alternative: AlternativeName;
  way: Way;
  rate: RequiredRate;
  needed: Needed;
  stations: SizedStation[];
  crews: SizedCrew[];
  /** Person-seconds of work on a head over the people's takt: how evenly the work is spread (line balance). */
  balance: number;
  /** In every shift. */
  people: number;
  shifts: number;
  dwells: SizedDwell[];
  chiller: SizedChiller | null;
  chain: SizedChain | null;
  crates: SizedCrates;
  byProducts: SizedByProduct[];
  utilities: SizedUtilities;
  figures: Figure[];
  /** What was changed so that the estimate reaches the required rate. */
  changes: string[];
  estimate: DayEstimate;
  /** The plan as its file writes it. */
  plan: Record<string, unknown>;
}

export interface RequiredRate {
  headsPerWeek: number;
  availability: number;
  /** Of the busiest day, hung. */
  headsPerDay: number;
  carcassesPerDay: number;
  carcassKgPerDay: number;
  shiftSeconds: number;
  preStartSeconds: number;
  breakSeconds: number;
  /** Of the kill, before every break. */
  emptyingSeconds: number;
  /** Way of the last head down the line. */
  lastHeadSeconds: number;
  /** Shifts less the four above. */
  hangingSeconds: number;
  /** Heads hung, on the average of the hanging time. */
  headsPerSecond: number;
  /** While the line runs: the average over the availability. */
  designHeadsPerSecond: number;
  taktSeconds: number;
}

/** What the day asks for, by the definitions by which it is simulated: breaks count as time. */
export interface Needed {
  carcasses: number;
  /** From the start of the first shift to the end of the last. */
  carcassesPerHour: number;
  /** End of the last shift, seconds of the clock. */
  byClockSeconds: number;
}

export interface SizedStation {
  name: string;
  section: string;
  work: "manual" | "machine" | "crates";
  /** Of one position, repairs left out; of a crate step, for the crates that are handled at once. */
  cycleSeconds: number;
  /** Null for stations of the line. */
  cratesAtOnce: number | null;
  /** Repair time for every second of work. */
  repairShare: number;
  /** For which a head that travels here holds a position already, where there are no places. */
  heldSeconds: number;
  /** Of the places before it: the time that they cover, and the way to it; null where they are given or not sized. */
  covers: { coverSeconds: number; travelSeconds: number } | null;
  positions: number;
  /** At each position; 0 for a machine. */
  peoplePerPosition: number;
  /** Null for a machine. */
  crew: string | null;
  /** Heads hung that its positions could follow. */
  headsPerSecondAtMost: number;
  /** How often somebody begins there for each head hung: once, or once for so many crates. */
  visitsPerHead: number;
  /** Work of people for each head hung; 0 for a machine. */
  personSecondsPerHead: number;
  /** People of the crew that repairs whom its repairs keep busy, on the average. */
  repairLoad: number;
  /** Share of its positions' time that the design rate takes, repairs counted. */
  load: number;
  /** Places before it; null for crate steps, which are not sized, and off the line, without a limit. */
  places: number | null;
}

export interface SizedCrew {
  name: string;
  /** Null for a crew that is no pooled post. */
  zone: Zone | null;
  people: number;
  /** What it works at; for maintenance, what it repairs. */
  steps: string[];
  /** On the way between its steps, for each head. */
  walkingSeconds: number;
  /** Share of their time that the design rate takes, walking or repairs counted. */
  load: number;
}

/** Places = rate x (stay + travel + cover), rounded up, + reserved, unless they are given. */
export interface SizedDwell {
  name: string;
  /** Mean least stay. */
  seconds: number;
  headsPerSecond: number;
  /** Longer than the least stay where stays differ: heads leave in order. */
  staySeconds: number;
  travelSeconds: number;
  coverSeconds: number;
  /** For heads that are being stunned or stuck. */
  reserved: number;
  given: boolean;
  places: number;
}

/** Hooks = present x (1 + spare) / heads on a hook, rounded up; present = rate x stay or what loads bring, never more than a day's carcasses. */
export interface SizedChiller {
  name: string;
  /** Mean time to the core temperature. */
  seconds: number;
  headsPerSecond: number;
  /** Longer than that where weights differ: carcasses leave in order. */
  staySeconds: number;
  /** Of the loads that a fast line works off within the stay. */
  fromLoads: number;
  /** Carcasses in it at once. */
  present: number;
  spareShare: number;
  given: boolean;
  places: number;
  hooks: number;
  headsPerHook: number;
  /** Out of one carcass. */
  joules: number;
  meanKilowatts: number;
  /** With every place that the design rate fills taken. */
  peakKilowatts: number;
  /** Electricity of the fans, and heat of doors, people and walls. */
  fanKilowatts: number;
  otherKilowatts: number;
  /** Heat taken out for each unit of electricity. */
  cop: number;
  /** Electricity: all heat on the average of the shifts by the cop, and the fans. */
  electricKilowatts: number;
}

/** An overhead chain through the bleeding dwell. */
export interface SizedChain {
  shacklesPerSecond: number;
  /** On the chain: the way to bleeding, and bleeding. */
  seconds: number;
  metresPerSecond: number;
  metres: number;
  /** On the chain and on their way back. */
  shackles: number;
}

export interface SizedCrates {
  perDay: number;
  /** In them: no fewer than are needed, since crates are whole and loads equal. */
  heads: number;
  perHour: number;
  lorries: number;
  cratesPerLorry: number;
  everySeconds: number;
  leadSeconds: number;
  /** Of a lorry, on the average. */
  lateSeconds: number;
  /** Washing, restacking and what follows, of one crate. */
  backSeconds: number;
  awaySeconds: number;
  lairageCrates: number;
  /** In circulation, on the road included. */
  fleet: number;
}

export interface SizedByProduct {
  name: string;
  kgPerHead: number;
  kgPerDay: number;
  /** On the average of the hanging time. */
  kgPerHour: number;
  vessels: number;
  emptyingsPerDay: number;
}

export interface SizedUtilities {
  litresPerDay: number;
  litresPerHead: number;
  kilowatts: number;
  kilowattHoursPerDay: number;
}
