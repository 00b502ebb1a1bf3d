import { describe, expect, it } from "vitest";
import { type Plan, readPlan } from "../../../../sim/asked/plan/index.ts";
import { sampleFiles, samplePlan } from "./samplePlan.ts";

function planOf(json: unknown): Plan {
  const { plan, faults } = readPlan(json, sampleFiles);
  expect(faults).toEqual([]);
  return plan as Plan;
}

const NO_UTILITIES = { waterPerHead: 0, waterPerHour: 0, energyPerHead: 0, powerKilowatts: 0 };
const ALWAYS_2500_G = { family: "constant", value: 2.5 };

const smallest = {
  name: "smallest",
  day: { shifts: [{ name: "day", from: "06:00", to: "14:30" }] },
  supply: { saturated: { heads: 1000 } },
  line: [{ name: "skinning", kind: "station", cycle: "5 s" }],
};

describe("a plan that names only what it must", () => {
  it("gets every default", () => {
    expect(planOf(smallest)).toEqual({
      name: "smallest",
      notes: "",
      sources: [],
      day: {
        startClockSeconds: 21600,
        shifts: [{ name: "day", fromSeconds: 0, toSeconds: 30600 }],
        breaks: [],
        closing: { rule: "finish" },
        preStartSeconds: 0,
        cleaning: null,
        safeStop: null,
        ceilingSeconds: 172800,
      },
      supply: { kind: "saturated", heads: 1000, liveWeightKg: ALWAYS_2500_G },
      liveHandling: null,
      crews: [],
      line: [
        {
          name: "skinning",
          section: "line",
          kind: "station",
          work: "machine",
          positions: 1,
          buffer: 0,
          pace: [],
          cycleSeconds: { family: "constant", value: 5 },
          weightFactor: null,
          weights: null,
          crews: [],
          peoplePerPosition: 1,
          travelSeconds: null,
          next: null,
          offLine: false,
          breakdowns: [],
          removals: [],
          diversions: [],
          byProducts: [],
          utilities: NO_UTILITIES,
          capital: null,
          settings: [],
        },
      ],
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
    });
  });
});

describe("a plan of a plain line", () => {
  const plan = planOf(samplePlan());

  it("counts times from the start of the day, and hours past 24 into the next", () => {
    expect(plan.day).toEqual({
      startClockSeconds: 5 * 3600,
      shifts: [
        { name: "early", fromSeconds: 3600, toSeconds: 9 * 3600 },
        { name: "late", fromSeconds: 9 * 3600, toSeconds: 20.5 * 3600 },
      ],
      breaks: [
        {
          name: "first break",
          atSeconds: 4 * 3600,
          lengthSeconds: 900,
          crews: ["hanging", "skinning"],
          ends: "after its length",
          laterSeconds: {},
          stages: [],
        },
        {
          name: "second break",
          atSeconds: 7 * 3600,
          lengthSeconds: 1800,
          crews: ["hanging"],
          ends: "after its length",
          laterSeconds: {},
          stages: ["stunning"],
        },
      ],
      closing: { rule: "stop hanging", atSeconds: 19.5 * 3600 },
      preStartSeconds: 0,
      cleaning: null,
      safeStop: null,
      ceilingSeconds: 36 * 3600,
    });
  });

  it("writes out repeated loads, numbered, and fills in the weight of the others", () => {
    const delay = { family: "triangular", min: 0, mode: 300, max: 1800 };
    const lorry = {
      delay,
      crates: 60,
      headsPerCrate: 12,
      comesShare: 1,
      deadOnArrivalShare: 0.002,
      liveWeightKg: { family: "normal", mean: 2.5, sd: 0.2 },
    };
    expect(plan.supply).toEqual({
      kind: "loads",
      loads: [
        { name: "lorry 1", atSeconds: 1800, ...lorry },
        { name: "lorry 2", atSeconds: 4500, ...lorry },
        { name: "lorry 3", atSeconds: 7200, ...lorry },
        {
          name: "late lorry",
          atSeconds: 25200,
          delay: null,
          crates: 50,
          headsPerCrate: 12,
          comesShare: 1,
          deadOnArrivalShare: 0,
          liveWeightKg: { family: "constant", value: 2.5 },
        },
      ],
    });
  });

  it("carries live handling over, the lairage being the places before the feeding", () => {
    const step = { cratesPerCycle: 1, peoplePerPosition: 1, utilities: NO_UTILITIES, waterReusedShare: 0 };
    expect(plan.liveHandling).toEqual({
      way: "hand-slid",
      toHanging: [
        {
          ...step,
          name: "unloading",
          places: Number.POSITIVE_INFINITY,
          positions: 2,
          secondsPerCycle: { family: "uniform", min: 10, max: 14 },
          crews: ["hanging"],
          breakdowns: [],
        },
        {
          ...step,
          name: "crate sliding",
          places: 120,
          positions: 1,
          secondsPerCycle: { family: "constant", value: 20 },
          crews: [],
          breakdowns: [
            {
              name: "roller jam",
              clock: "running",
              scope: "position",
              uptimeSeconds: { family: "exponential", mean: 10800 },
              repairSeconds: { family: "constant", value: 120 },
              crew: null,
              headInHand: "resume",
            },
          ],
        },
      ],
      back: [],
      cratesAtHanging: 2,
      fleet: null,
    });
  });

  it("gives each crew its people by shift", () => {
    expect(plan.crews).toEqual([
      {
        name: "hanging",
        people: [6, 6],
        rule: "longest queue",
        walkSeconds: 0,
        absentShare: 0,
        payPerSecond: null,
      },
      {
        name: "skinning",
        people: [3, 2],
        rule: "furthest downstream",
        walkSeconds: 0,
        absentShare: 0,
        payPerSecond: null,
      },
    ]);
  });

  it("turns a rate into a constant cycle, null into no limit, and a crew into manual work", () => {
    const [, stunning, bleeding, skinning, chilling] = plan.line;
    expect(stunning).toMatchObject({ cycleSeconds: { family: "constant", value: 5 }, work: "machine" });
    expect(bleeding).toMatchObject({
      kind: "dwell",
      places: 40,
      dwell: { kind: "drawn", seconds: { family: "constant", value: 150 } },
    });
    expect(skinning).toMatchObject({ buffer: Number.POSITIVE_INFINITY, work: "manual", crews: ["skinning"] });
    expect(chilling).toMatchObject({ places: Number.POSITIVE_INFINITY });
  });

  it("reads observed values from a column of a CSV file, sorted", () => {
    expect(plan.line[3]).toMatchObject({ cycleSeconds: { family: "empirical", values: [4.1, 4.6, 5.2] } });
  });

  it("reads points of a head's way", () => {
    expect(plan.limits[0]).toEqual({
      name: "stun to stick",
      from: { stage: "stunning", moment: "end" },
      to: { stage: "bleeding", moment: "entry" },
      minSeconds: null,
      maxSeconds: 10,
      source: "example of a house rule",
    });
    expect(plan.limits[1]).toMatchObject({
      from: { stage: null, moment: "entry" },
      to: { stage: null, moment: "exit" },
    });
  });

  it("reads single heads that come one by one", () => {
    const supply = { stream: { interarrival: { exponential: { mean: "6 s" } }, heads: 10, whenFull: "turn away" } };
    expect(planOf({ ...smallest, supply }).supply).toEqual({
      kind: "stream",
      interarrival: { family: "exponential", mean: 6 },
      heads: 10,
      whenFull: "turn away",
      liveWeightKg: ALWAYS_2500_G,
    });
  });
});

describe("every distribution", () => {
  it.each([
    [{ lognormal: { mean: "5.5 s", cv: 0.3 } }, { family: "lognormal", mean: 5.5, cv: 0.3 }],
    [{ gamma: { mean: "1 min", cv: 0.3 } }, { family: "gamma", mean: 60, cv: 0.3 }],
    [{ weibull: { mean: "5 s", cv: 1.5 } }, { family: "weibull", mean: 5, cv: 1.5 }],
    [{ exponential: { mean: "5 s" } }, { family: "exponential", mean: 5 }],
    [{ erlang: { mean: "6 s", k: 3 } }, { family: "erlang", mean: 6, k: 3 }],
    [{ normal: { mean: "5 s", sd: "2 s" } }, { family: "normal", mean: 5, sd: 2 }],
    [{ uniform: { min: "1 s", max: "2 s" } }, { family: "uniform", min: 1, max: 2 }],
    [{ triangular: { min: "3 s", mode: "5 s", max: "10 s" } }, { family: "triangular", min: 3, mode: 5, max: 10 }],
    [{ pert: { min: "2 s", mode: "3 s", max: "7 s" } }, { family: "pert", min: 2, mode: 3, max: 7 }],
    [{ empirical: ["4.6 s", "4.1 s"] }, { family: "empirical", values: [4.1, 4.6] }],
    ["4.2 s", { family: "constant", value: 4.2 }],
  ])("%j is read into SI", (cycle, varying) => {
    const line = [{ name: "skinning", kind: "station", cycle }];
    expect(planOf({ ...smallest, line }).line[0]).toMatchObject({ cycleSeconds: varying });
  });
});

describe("who steps in", () => {
  const withCrews = (changes: object[]) => ({
    ...smallest,
    day: { shifts: [...smallest.day.shifts, { name: "late", from: "15:00", to: "18:00" }] },
    line: [
      { name: "kill", kind: "station", cycle: "5 s", crew: "kill", peoplePerPosition: 2 },
      { name: "skinning", kind: "station", cycle: "5 s", crew: ["skinning", "relief"] },
    ],
    crews: [
      { name: "kill", people: 2 },
      { name: "skinning", people: { day: 3 } },
      { name: "relief", people: 1 },
    ].map((crew, row) => ({ ...crew, ...changes[row] })),
  });

  it("is kept from leaving undone what nobody else may do, and brings a crew to what its own work takes", () => {
    const [kill, skinning, relief] = planOf(withCrews([{ cover: ["skinning", "relief"] }, { cover: ["kill"] }])).crews;
    expect(kill!.cover).toEqual({
      by: [
        { crew: "skinning", keeps: 0 },
        { crew: "relief", keeps: 0 },
      ],
      atLeast: [2, 2],
    });
    // Nobody need stand at skinning, since relief may; and the crew has no people late.
    expect(skinning!.cover).toEqual({ by: [{ crew: "kill", keeps: 2 }], atLeast: [1, 0] });
    expect(relief).not.toHaveProperty("cover");
  });

  it("is asked for people who are ill as well, as far as the plan says", () => {
    const [, skinning] = planOf(withCrews([{}, { cover: ["relief"], atLeast: 9, ill: 2 }])).crews;
    expect(skinning).toMatchObject({ people: [1, 0], cover: { atLeast: [3, 0] } });
  });
});
