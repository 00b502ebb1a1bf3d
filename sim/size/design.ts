import type { DayEstimate } from "../estimate/index.ts";
import type { Figure } from "./demand.ts";

/** What a demand asks of a plant, part by part, and a first plan of it. SI units where no unit is named. */
export interface Design {
  name: string;
  rate: RequiredRate;
  stations: SizedStation[];
  crews: SizedCrew[];
  /** Person-seconds of work on a head over the people's takt: how evenly the work is spread (line balance). */
  balance: number;
  people: number;
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
  /** Of the busiest day, hung. */
  headsPerDay: number;
  carcassesPerDay: number;
  carcassKgPerDay: number;
  /** Shifts less breaks, checks, the emptying of the kill before breaks and the last head's way down the line. */
  hangingSeconds: number;
  /** Heads hung, on the average of the hanging time. */
  headsPerSecond: number;
  /** While the line runs: the average over the availability. */
  designHeadsPerSecond: number;
  taktSeconds: number;
}

export interface SizedStation {
  name: string;
  section: string;
  work: "manual" | "machine" | "crates";
  /** Of one position, repairs left out. */
  cycleSeconds: number;
  positions: number;
  /** At each position; 0 for a machine. */
  peoplePerPosition: number;
  /** Null for a machine. */
  crew: string | null;
  /** Share of its positions' time that the design rate takes, repairs counted. */
  load: number;
  /** Places before it; for crate steps not sized. */
  places: number | null;
}

export interface SizedCrew {
  name: string;
  people: number;
  /** Share of their time that the design rate takes. */
  load: number;
}

export interface SizedDwell {
  name: string;
  seconds: number;
  places: number;
}

export interface SizedChiller extends SizedDwell {
  hooks: number;
  headsPerHook: number;
  meanKilowatts: number;
  /** With every place that the design rate fills taken. */
  peakKilowatts: number;
}

/** An overhead chain through the bleeding dwell. */
export interface SizedChain {
  metresPerSecond: number;
  metres: number;
  /** On the chain and on their way back. */
  shackles: number;
}

export interface SizedCrates {
  perDay: number;
  perHour: number;
  lorries: number;
  cratesPerLorry: number;
  everySeconds: number;
  lairageCrates: number;
  /** In circulation, on the road included. */
  fleet: number;
}

export interface SizedByProduct {
  name: string;
  kgPerDay: number;
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
