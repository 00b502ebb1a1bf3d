import type { Chain, ChainStation, CrateStep, Dwell, Plan, Station } from "../../sim/asked/plan/plan.ts";
import type { DayRecord, StageRecord } from "../../sim/day/engine/dayRecord.ts";
import { HAND_MADE_PLAN, handMadeDay } from "./handMadeDay.ts";

/**
 * A plan that uses water, energy, money, a chain, a gate, vessels, weights and computed chilling, and a day for it, by
 * hand, so that every measure can be worked out on paper. All invented.
 *
 * Shifts 0 to 4 h and 5 to 8 h, work until 9 h, last carcass out at 11 h: 8 h of work (1 h of it overtime), open for 11 h.
 */
const DRY = { waterPerHead: 0, waterPerHour: 0, energyPerHead: 0, powerKilowatts: 0 };
const [STATION, DWELL] = HAND_MADE_PLAN.line as [Station, Dwell];
const CRATES = HAND_MADE_PLAN.liveHandling!.toHanging[0]!;

const STUNNING: Station = {
  ...STATION,
  name: "stunning",
  section: "kill",
  work: "machine",
  positions: 1,
  removals: [],
};
const SKINNING: Station = {
  ...STATION,
  work: "machine",
  crews: [],
  peoplePerPosition: 0,
  positions: 2,
  pace: [],
  cycleSeconds: { family: "gamma", mean: 40, cv: 0.1 },
  weights: { fromKg: 1.8, toKg: 3.2, else: "trim" },
  diversions: [{ to: "trim", share: 0.05 }],
  utilities: { waterPerHead: 3, waterPerHour: 0, energyPerHead: 0.02, powerKilowatts: 5 },
  capital: { price: 220_000, lifeYears: 10, daysPerYear: 220 },
  byProducts: [{ name: "skins", share: 0.1, of: "live weight", vessel: "skin bin" }],
};
const TRIM: Station = { ...STATION, name: "trim", offLine: true, removals: [] };

const OPENING: ChainStation = {
  name: "abdomen opening",
  at: 10,
  window: 5,
  ifUnfinished: "pass",
  positions: 1,
  pace: [],
  cycleSeconds: { family: "constant", value: 4 },
  weightFactor: null,
  crews: ["dressing"],
  peoplePerPosition: 1,
  breakdowns: [],
  byProducts: [],
  utilities: DRY,
  capital: null,
  settings: [],
};
const EVISCERATION: ChainStation = {
  ...OPENING,
  name: "evisceration",
  at: 20,
  ifUnfinished: "stop",
  positions: 3,
  byProducts: [{ name: "viscera", share: 0.3, of: "live weight", vessel: null }],
};
const CHAIN: Chain = {
  ...DWELL,
  kind: "chain",
  name: "evisceration chain",
  section: "dressing",
  places: 60,
  pace: [],
  secondsPerShackle: 5,
  shackles: { count: 100, backSeconds: 120 },
  stations: [OPENING, EVISCERATION],
  unfinishedTo: "trim",
  capital: { price: 44_000, lifeYears: 20, daysPerYear: 220 },
};
const CHILLING: Dwell = {
  ...DWELL,
  headsPerHook: 2,
  places: 800,
  utilities: { ...DRY, powerKilowatts: 30 },
  dwell: {
    kind: "chilling",
    chilling: {
      startCelsius: 39,
      airCelsius: 0,
      coreCelsius: 4,
      airMetresPerSecond: 2,
      carcassLengthMetres: 0.36,
      carcassShare: 0.575,
      conductivity: 0.48,
      density: 1070,
      specificHeat: 3500,
    },
  },
};
const WASHING: CrateStep = {
  ...CRATES,
  name: "crate washing",
  utilities: { waterPerHead: 10, waterPerHour: 25, energyPerHead: 0, powerKilowatts: 2 },
  waterReusedShare: 0.6,
};

export const WHOLE_PLAN: Plan = {
  ...HAND_MADE_PLAN,
  day: {
    ...HAND_MADE_PLAN.day,
    shifts: [
      { name: "early", fromSeconds: 0, toSeconds: 14_400 },
      { name: "late", fromSeconds: 18_000, toSeconds: 28_800 },
    ],
    cleaning: { seconds: 1800, crews: ["dressing"] },
    safeStop: { from: "skinning", to: "trim" },
  },
  liveHandling: { ...HAND_MADE_PLAN.liveHandling!, back: [WASHING] },
  crews: [
    { ...HAND_MADE_PLAN.crews[0]!, people: [4, 3], absentShare: 0.1, payPerSecond: 0.005 },
    { ...HAND_MADE_PLAN.crews[0]!, name: "maintenance", people: [1, 1], payPerSecond: 0.006 },
  ],
  line: [STUNNING, SKINNING, CHAIN, CHILLING, TRIM],
  gates: [{ name: "to sticking", from: "stunning", to: { stage: "skinning", moment: "end" }, atMost: 2 }],
  vessels: [
    { name: "blood tank", capacityKg: 60, emptyAtKg: 50, emptyingSeconds: 300, crew: null, whenFull: "spill" },
    { name: "skin bin", capacityKg: 90, emptyAtKg: 90, emptyingSeconds: 240, crew: null, whenFull: "stop" },
  ],
  money: {
    currency: "EUR",
    waterPerLitre: 0.002,
    wasteWaterPerLitre: 0.003,
    energyPerKilowattHour: 0.25,
    fuelPerKilowattHour: 0,
    overtimeFactor: 1.5,
    livePricePerKg: 1.8,
    plantCosts: null,
    pricesPerKg: { carcass: 6, skins: 0.5, condemned: -0.2 },
  },
  dressing: "with head, liver and kidneys",
};

export function wholeDay(): DayRecord {
  const base = handMadeDay();
  const load = base.loads[0]!;
  return {
    ...base,
    finishSeconds: 39_600,
    workFinishSeconds: 32_400,
    shiftEndSeconds: 28_800,
    stages: [
      ...base.stages.filter(({ kind }) => kind === "crates"),
      stage("crate washing", "crates", { processed: 50 }),
      stage("stunning", "station", { heldSeconds: 1440 }),
      stage("skinning", "station", {
        positions: 2,
        processed: 980,
        unworked: 20,
        diverted: 49,
        heldSeconds: 288,
        stateSeconds: [44_100, 3000, 20_000, 0, 8500, 3600],
      }),
      stage("evisceration chain", "chain", {}),
      stage("abdomen opening", "chain station", { processed: 931, unfinished: 49 }),
      stage("evisceration", "chain station", { positions: 3 }),
      stage("chilling", "dwell", { heatJoules: 1.98e8, queue: { mean: 400, max: 700 } }),
      stage("trim", "station", {}),
    ],
    crews: [
      {
        name: "dressing",
        lastWorkSeconds: 0,
        peopleMax: 4,
        people: [4, 2],
        absent: [0, 0],
        busySeconds: 60_000,
        work: [],
        jobSeconds: 0,
        presentSeconds: 84_000,
      },
      {
        name: "maintenance",
        lastWorkSeconds: 0,
        peopleMax: 1,
        people: [1, 1],
        absent: [0, 0],
        busySeconds: 3000,
        work: [],
        jobSeconds: 3000,
        presentSeconds: 28_800,
      },
    ],
    loads: [
      { ...load, arrivedSeconds: 600, leftSeconds: 4200 },
      { ...load, arrivedSeconds: 7800, unloadedSeconds: 8800, emptiedSeconds: 20_000, leftSeconds: 9600 },
    ],
    chains: [
      {
        name: "evisceration chain",
        shackles: 1250,
        gaps: 250,
        missingShackles: 50,
        standSeconds: { down: 720, unfinished: 288, unloading: 144, pause: 576 },
      },
    ],
    gates: [{ name: "to sticking", atMost: 2, mean: 1.25, max: 2 }],
    vessels: [
      { name: "blood tank", emptied: 3, maxKg: 60, spilledKg: 4, fullSeconds: 90 },
      { name: "skin bin", emptied: 2, maxKg: 90, spilledKg: 0, fullSeconds: 480 },
    ],
    masses: {
      liveKg: 2500,
      byProductsKg: { blood: 99, skins: 240, viscera: 684 },
      outKg: { carcass: 1380, "dead on arrival": 25, condemned: 72 },
      onLineKg: 0,
      carcassLiveKg: 2400,
    },
  };
}

function stage(name: string, kind: StageRecord["kind"], rest: Partial<StageRecord>): StageRecord {
  const plain = handMadeDay().stages[0]!;
  return { ...plain, name, kind, ...rest };
}
