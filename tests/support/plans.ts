import type {
  Break,
  Chain,
  ChainStation,
  CrateStep,
  Crew,
  Dwell,
  Plan,
  Station,
  Supply,
} from "../../sim/asked/plan/plan.ts";
import type { Varying } from "../../sim/maths/random/index.ts";

/** Small plans for tests, already in SI units, as the plan reader would give them. */

export const constant = (value: number): Varying => ({ family: "constant", value });
export const exponential = (mean: number): Varying => ({ family: "exponential", mean });

const NO_UTILITIES = { waterPerHead: 0, waterPerHour: 0, energyPerHead: 0, powerKilowatts: 0 };
const PLAIN_STAGE = {
  next: null,
  offLine: false,
  removals: [],
  diversions: [],
  byProducts: [],
  utilities: NO_UTILITIES,
  capital: null,
  settings: [],
};

export function station(name: string, cycle: Varying | number, changes: Partial<Station> = {}): Station {
  return {
    kind: "station",
    name,
    section: "line",
    travelSeconds: null,
    work: "machine",
    buffer: 0,
    positions: 1,
    cycleSeconds: typeof cycle === "number" ? constant(cycle) : cycle,
    pace: [],
    weightFactor: null,
    weights: null,
    crews: [],
    peoplePerPosition: 0,
    breakdowns: [],
    ...PLAIN_STAGE,
    ...changes,
  };
}

export function manual(name: string, cycle: Varying | number, crew: string, changes: Partial<Station> = {}): Station {
  return station(name, cycle, { work: "manual", crews: [crew], peoplePerPosition: 1, ...changes });
}

export function dwell(name: string, time: Varying | number, places: number, changes: Partial<Dwell> = {}): Dwell {
  return {
    kind: "dwell",
    name,
    section: "line",
    travelSeconds: null,
    places,
    headsPerHook: 1,
    dwell: { kind: "drawn", seconds: typeof time === "number" ? constant(time) : time },
    ...PLAIN_STAGE,
    ...changes,
  };
}

export function crew(name: string, people: number | number[], changes: Partial<Crew> = {}): Crew {
  return {
    name,
    people: typeof people === "number" ? [people] : people,
    rule: "furthest downstream",
    walkSeconds: 0,
    absentShare: 0,
    payPerSecond: null,
    ...changes,
  };
}

export function pause(name: string, atSeconds: number, lengthSeconds: number, changes: Partial<Break> = {}): Break {
  return {
    name,
    atSeconds,
    lengthSeconds,
    ends: "after its length",
    crews: [],
    laterSeconds: {},
    stages: [],
    ...changes,
  };
}

export const saturated = (heads: number): Supply => ({ kind: "saturated", heads, liveWeightKg: constant(2.5) });

export function stream(interarrival: Varying, heads: number, whenFull: "wait" | "turn away" = "wait"): Supply {
  return { kind: "stream", interarrival, heads, whenFull, liveWeightKg: constant(2.5) };
}

export function planOf(supply: Supply, line: Plan["line"], changes: Partial<Plan> = {}): Plan {
  return {
    name: "test plan",
    notes: "",
    sources: [],
    day: {
      startClockSeconds: 6 * 3600,
      shifts: [{ name: "day", fromSeconds: 0, toSeconds: 8 * 3600 }],
      breaks: [],
      closing: { rule: "finish" },
      preStartSeconds: 0,
      cleaning: null,
      safeStop: null,
      ceilingSeconds: 1e12,
    },
    supply,
    liveHandling: null,
    crews: [],
    line,
    limits: [],
    gates: [],
    stunned: null,
    vessels: [],
    sharedBreakdowns: [],
    money: null,
    dressing: "",
    presentation: null,
    utilities: null,
    bodyParts: null,
    targetHeadsPerSecond: null,
    ...changes,
  };
}

export function chain(
  name: string,
  places: number,
  secondsPerShackle: number,
  stations: ChainStation[],
  changes: Partial<Chain> = {},
): Chain {
  return {
    kind: "chain",
    name,
    section: "line",
    travelSeconds: null,
    places,
    secondsPerShackle,
    pace: [],
    shackles: null,
    stations,
    unfinishedTo: null,
    ...PLAIN_STAGE,
    ...changes,
  };
}

export function onChain(
  name: string,
  at: number,
  window: number,
  cycle: Varying | number,
  changes: Partial<ChainStation> = {},
): ChainStation {
  return {
    name,
    at,
    window,
    ifUnfinished: "stop",
    positions: 1,
    cycleSeconds: typeof cycle === "number" ? constant(cycle) : cycle,
    pace: [],
    weightFactor: null,
    crews: [],
    peoplePerPosition: 0,
    breakdowns: [],
    byProducts: [],
    utilities: NO_UTILITIES,
    capital: null,
    settings: [],
    ...changes,
  };
}

export function crateStep(name: string, seconds: Varying | number, changes: Partial<CrateStep> = {}): CrateStep {
  return {
    name,
    places: Infinity,
    cratesPerCycle: 1,
    positions: 1,
    secondsPerCycle: typeof seconds === "number" ? constant(seconds) : seconds,
    utilities: NO_UTILITIES,
    waterReusedShare: 0,
    crews: [],
    peoplePerPosition: 0,
    breakdowns: [],
    ...changes,
  };
}
