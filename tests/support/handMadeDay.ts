import type { CrateStep, Plan } from "../../sim/asked/plan/plan.ts";
import { type DayRecord, type OwnTime, STATES, type StageRecord, type Tally } from "../../sim/day/engine/dayRecord.ts";

const NO_UTILITIES = { waterPerHead: 0, waterPerHour: 0, energyPerHead: 0, powerKilowatts: 0 };

/** What a stage has that neither sends heads elsewhere nor uses, takes off or costs anything. */
const PLAIN_STAGE = {
  travelSeconds: null,
  next: null,
  offLine: false,
  diversions: [],
  byProducts: [],
  utilities: NO_UTILITIES,
  capital: null,
  settings: [],
};

/** A plan and a day for it, written by hand so that every measure can be worked out in the head. All invented. */
export const HAND_MADE_PLAN: Plan = {
  name: "Hand-made plant",
  notes: "Invented.",
  sources: [{ path: "", kind: "invented", note: "for tests" }],
  day: {
    startClockSeconds: 6 * 3600,
    shifts: [{ name: "early", fromSeconds: 1800, toSeconds: 7200 }],
    breaks: [
      {
        name: "coffee",
        atSeconds: 3600,
        lengthSeconds: 600,
        ends: "after its length",
        crews: ["dressing"],
        laterSeconds: {},
        stages: [],
      },
    ],
    closing: { rule: "finish" },
    preStartSeconds: 0,
    cleaning: null,
    safeStop: null,
    ceilingSeconds: 50_000,
  },
  supply: {
    kind: "loads",
    loads: [
      {
        name: "first lorry",
        atSeconds: 600,
        delay: null,
        comesShare: 1,
        crates: 50,
        headsPerCrate: 20,
        deadOnArrivalShare: 0.01,
        liveWeightKg: { family: "constant", value: 2.5 },
      },
    ],
  },
  liveHandling: {
    way: "hand-slid",
    toHanging: [crateStep("unloading", Number.POSITIVE_INFINITY), crateStep("crate feeding", 40)],
    back: [],
    cratesAtHanging: 2,
    fleet: null,
  },
  crews: [
    {
      name: "dressing",
      people: [4],
      rule: "furthest downstream",
      walkSeconds: 0,
      absentShare: 0,
      payPerSecond: null,
    },
  ],
  line: [
    {
      ...PLAIN_STAGE,
      kind: "station",
      name: "skinning",
      section: "dressing",
      work: "manual",
      buffer: 5,
      positions: 2,
      pace: [],
      cycleSeconds: { family: "constant", value: 8 },
      weightFactor: null,
      weights: null,
      crews: ["dressing"],
      peoplePerPosition: 1,
      breakdowns: [],
      removals: [{ as: "condemned", share: 0.01 }],
    },
    {
      ...PLAIN_STAGE,
      kind: "dwell",
      name: "chilling",
      section: "chilling",
      places: 100,
      headsPerHook: 1,
      dwell: { kind: "drawn", seconds: { family: "constant", value: 600 } },
      removals: [],
    },
  ],
  limits: [
    {
      name: "stick to evisceration",
      from: { stage: "skinning", moment: "entry" },
      to: { stage: "skinning", moment: "end" },
      minSeconds: null,
      maxSeconds: 60,
      source: "house rule, invented",
    },
    {
      name: "chilling time",
      from: { stage: "chilling", moment: "start" },
      to: { stage: "chilling", moment: "end" },
      minSeconds: 600,
      maxSeconds: null,
      source: "house rule, invented",
    },
  ],
  gates: [],
  stunned: null,
  vessels: [],
  sharedBreakdowns: [],
  money: null,
  dressing: "",
  presentation: null,
  utilities: null,
  bodyParts: null,
  targetHeadsPerSecond: 0.2,
};

function crateStep(name: string, places: number): CrateStep {
  return {
    name,
    places,
    cratesPerCycle: 1,
    positions: 1,
    secondsPerCycle: { family: "constant", value: 30 },
    utilities: NO_UTILITIES,
    waterReusedShare: 0,
    crews: [],
    peoplePerPosition: 0,
    breakdowns: [],
  };
}

/** First shift from 1800 s, last work at 9000 s, last carcass out of the chiller at 9600 s: 960 carcasses in 2 h are 480 an hour. */
export function handMadeDay(replication = 0): DayRecord {
  return {
    replication,
    status: "finished",
    stuckAt: [],
    left: [],
    startClockSeconds: 6 * 3600,
    watchedFromSeconds: 0,
    finishSeconds: 9600,
    workFinishSeconds: 9000,
    shiftEndSeconds: 7200,
    events: 12_345,
    heads: {
      arrived: 1000,
      hung: 990,
      out: { carcass: 960, "dead on arrival": 10, condemned: 30 },
      turnedAway: 0,
      fromBefore: { inLairage: 0, onLine: 0 },
      inLairage: 0,
      onLine: 0,
    },
    stages: [
      stage("unloading", "", "crates", Number.POSITIVE_INFINITY, 1, [4500, 0, 4500, 0, 0, 0], { mean: 3, max: 50 }),
      stage("crate feeding", "", "crates", 40, 1, [1800, 900, 6300, 0, 0, 0], { mean: 12, max: 40 }),
      stage("skinning", "dressing", "station", 5, 2, [9000, 1800, 3600, 900, 1800, 900], { mean: 2.5, max: 5 }),
      stage("chilling", "chilling", "dwell", 100, 1, [6750, 0, 2250, 0, 0, 0], { mean: 61, max: 90 }),
    ],
    crews: [
      {
        name: "dressing",
        lastWorkSeconds: 0,
        peopleMax: 4,
        people: [4],
        absent: [0],
        busySeconds: 21_600,
        work: [{ stage: "skinning", seconds: 21_600, repairSeconds: 3600 }],
        jobSeconds: 0,
        presentSeconds: 28_800,
      },
    ],
    sections: [
      { name: "dressing", wip: { mean: 4.25, max: 7 } },
      { name: "chilling", wip: { mean: 61, max: 90 } },
    ],
    limits: [
      { name: "stick to evisceration", minSeconds: null, maxSeconds: 60, tally: tally(200, 12, 75), beyond: 5 },
      { name: "chilling time", minSeconds: 600, maxSeconds: null, tally: tally(0, 0, 0), beyond: 0 },
    ],
    timeInSystem: tally(960, 700, 5000),
    loads: [
      {
        name: "first lorry",
        heads: 1000,
        crates: 50,
        dueSeconds: 600,
        arrivedSeconds: 700,
        unloadedSeconds: 2500,
        emptiedSeconds: 8000,
        washedSeconds: null,
        leftSeconds: 2500,
      },
    ],
    chains: [],
    gates: [],
    stunned: null,
    vessels: [],
    sharedBreakdowns: [],
    masses: {
      liveKg: 2500,
      byProductsKg: {},
      outKg: { carcass: 2400, "dead on arrival": 25, condemned: 75 },
      onLineKg: 0,
      carcassLiveKg: 2400,
    },
    lairage: { mean: 14.5, max: 40 },
    traces: null,
    perHead: null,
    binding: null,
    killStops: null,
  };
}

function stage(
  name: string,
  section: string,
  kind: StageRecord["kind"],
  places: number,
  positions: number,
  stateSeconds: number[],
  queue: StageRecord["queue"],
): StageRecord {
  return {
    name,
    section,
    kind,
    places,
    positions,
    processed: 990,
    queue,
    stateSeconds,
    ownTime: withLessWaiting(stateSeconds, positions),
    stops: 3,
    unworked: 0,
    unfinished: 0,
    diverted: 0,
    heldSeconds: 0,
    heatJoules: 0,
  };
}

/** The own time of a stage that starved for a third of its waiting between its first head and its last. */
function withLessWaiting(stateSeconds: readonly number[], positions: number): OwnTime {
  const starved = STATES.indexOf("starved");
  const own = stateSeconds.map((seconds, state) => (state === starved ? seconds / 3 : seconds));
  const total = own.reduce((sum, seconds) => sum + seconds, 0);
  return { fromSeconds: 600, toSeconds: 600 + total / positions, stateSeconds: own };
}

/** Quantiles on the straight line from min to max. */
export function tally(count: number, min: number, max: number): Tally {
  const at = (p: number): number => min + p * (max - min);
  return {
    count,
    mean: at(0.5),
    sd: (max - min) / Math.sqrt(12),
    min,
    max,
    quantiles: {
      p05: at(0.05),
      p25: at(0.25),
      p50: at(0.5),
      p75: at(0.75),
      p90: at(0.9),
      p95: at(0.95),
      p99: at(0.99),
    },
    bins: count === 0 ? [] : [{ from: min, to: max, count }],
  };
}
