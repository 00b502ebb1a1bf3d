import type { Break, Crew, Dwell, Plan, Station, Supply } from "../../sim/plan/plan.ts";
import type { Varying } from "../../sim/random/index.ts";

/** Small plans for tests, already in SI units, as the plan reader would give them. */

export const constant = (value: number): Varying => ({ family: "constant", value });
export const exponential = (mean: number): Varying => ({ family: "exponential", mean });

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
    crew: null,
    peoplePerPosition: 0,
    breakdowns: [],
    removals: [],
    ...changes,
  };
}

export function manual(name: string, cycle: Varying | number, crew: string, changes: Partial<Station> = {}): Station {
  return station(name, cycle, { work: "manual", crew, peoplePerPosition: 1, ...changes });
}

export function dwell(name: string, time: Varying | number, places: number, changes: Partial<Dwell> = {}): Dwell {
  return {
    kind: "dwell",
    name,
    section: "line",
    travelSeconds: null,
    places,
    dwellSeconds: typeof time === "number" ? constant(time) : time,
    removals: [],
    ...changes,
  };
}

export function crew(name: string, people: number | number[], changes: Partial<Crew> = {}): Crew {
  return { name, people: typeof people === "number" ? [people] : people, rule: "furthest downstream", ...changes };
}

export function pause(name: string, atSeconds: number, lengthSeconds: number, changes: Partial<Break> = {}): Break {
  return { name, atSeconds, lengthSeconds, crews: [], laterSeconds: {}, stages: [], ...changes };
}

export const saturated = (heads: number): Supply => ({ kind: "saturated", heads });

export function stream(interarrival: Varying, heads: number, whenFull: "wait" | "turn away" = "wait"): Supply {
  return { kind: "stream", interarrival, heads, whenFull };
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
      ceilingSeconds: 1e12,
    },
    supply,
    liveHandling: null,
    crews: [],
    line,
    limits: [],
    targetHeadsPerSecond: null,
    ...changes,
  };
}
