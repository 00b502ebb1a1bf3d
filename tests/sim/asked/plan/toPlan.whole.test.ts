import { describe, expect, it } from "vitest";
import { type Chain, type Plan, readPlan } from "../../../../sim/asked/plan/index.ts";
import { wholePlan } from "../../../support/wholePlan.ts";

const NOTHING = { waterPerHead: 0, waterPerHour: 0, energyPerHead: 0, powerKilowatts: 0 };
const always = (value: number) => ({ family: "constant", value });

function planOf(json: unknown): Plan {
  const { plan, faults } = readPlan(json, { readText: () => "" });
  expect(faults).toEqual([]);
  return plan as Plan;
}

describe("the plan of a whole plant", () => {
  const plan = planOf(wholePlan());
  const stage = (name: string) => plan.line.find((one) => one.name === name);
  const chain = stage("kill chain") as Chain;

  it("has the day's checks, cleaning and safe stop", () => {
    expect(plan.day).toMatchObject({
      preStartSeconds: 600,
      cleaning: { seconds: 2700, crews: ["kill", "dressing"] },
      safeStop: { from: "stunning", to: "bleeding" },
    });
  });

  it("lets every crew clean when the file names none", () => {
    const json = wholePlan();
    const day = { ...json.day, cleaning: { length: "45 min" } };
    expect(planOf({ ...json, day }).day.cleaning?.crews).toEqual([
      "fork-lift",
      "kill",
      "dressing",
      "relief",
      "maintenance",
    ]);
  });

  it("handles crates in the automatic way and follows them back", () => {
    const { way, toHanging, back, cratesAtHanging, fleet } = plan.liveHandling!;
    expect({ way, cratesAtHanging, fleet }).toEqual({
      way: "automatic",
      cratesAtHanging: 4,
      fleet: { crates: 400, awaySeconds: 10800 },
    });
    const steps = [...toHanging, ...back].map((step) => [
      step.name,
      step.places,
      step.cratesPerCycle,
      step.secondsPerCycle,
    ]);
    expect(steps).toEqual([
      ["fork-lift in", Number.POSITIVE_INFINITY, 20, always(90)],
      ["destacking", 200, 4, always(15)],
      ["crate washer", 40, 1, always(10)],
      ["restacking", 30, 1, always(8)],
      ["pallets out", 60, 20, always(80)],
    ]);
  });

  it("turns the change of the washer's filter into a breakdown on running time", () => {
    expect(plan.liveHandling?.back[0]).toMatchObject({
      waterReusedShare: 0.6,
      utilities: { waterPerHead: 12, waterPerHour: 100, powerKilowatts: 9 },
      breakdowns: [
        {
          name: "filter change",
          clock: "running",
          scope: "station",
          uptimeSeconds: always(7200),
          repairSeconds: always(360),
          crew: "maintenance",
          headInHand: "resume",
        },
      ],
    });
  });

  it.each([
    ["hand-slid", ["unloading", "crate sliding", "crate hosing", "restacking"]],
    ["lift", ["unloading", "crate lift", "crate washer", "restacking"]],
  ])("names the crate steps of the %s way", (way, names) => {
    const json = wholePlan();
    const { palletsOut, ...handling } = json.liveHandling;
    const { toHanging, back } = planOf({ ...json, liveHandling: { ...handling, way } }).liveHandling!;
    expect([...toHanging, ...back].map(({ name }) => name)).toEqual(names);
  });

  it("gives people their walk, their absence and their pay", () => {
    expect(plan.crews[1]).toEqual({
      name: "kill",
      people: [6],
      rule: "furthest downstream",
      walkSeconds: 6,
      absentShare: 0.05,
      payPerSecond: 0.005,
    });
  });

  it("keeps crews in their order of preference", () => {
    expect(stage("hanging")).toMatchObject({ crews: ["kill", "relief"], work: "manual" });
    expect(plan.liveHandling?.back[1]?.crews).toEqual(["fork-lift", "kill"]);
  });

  it("leaves out what is left out", () => {
    expect(plan.line.map(({ name }) => name)).toEqual([
      "hanging",
      "stunning",
      "kill chain",
      "bleeding",
      "skinning machine",
      "hand skinning",
      "evisceration",
      "inspection",
      "trim",
      "chilling",
    ]);
  });

  it("counts a chain in shackles", () => {
    const { stations, ...rest } = chain;
    expect(rest).toEqual({
      name: "kill chain",
      section: "kill",
      travelSeconds: null,
      next: null,
      offLine: false,
      removals: [],
      diversions: [],
      byProducts: [],
      utilities: { ...NOTHING, waterPerHead: 1, waterPerHour: 60 },
      capital: null,
      settings: [],
      kind: "chain",
      places: 40,
      pace: [],
      secondsPerShackle: 5,
      pitchMetres: 0.3,
      shackles: { count: 60, backSeconds: 90 },
      unfinishedTo: "hand skinning",
    });
    expect(stations.map(({ at, window, ifUnfinished }) => [at, window, ifUnfinished])).toEqual([
      [2, 3, "stop"],
      [25, 6, "pass"],
    ]);
  });

  it("does not lose a shackle to rounding: 0.6 m at a pitch of 0.2 m is three", () => {
    const json = wholePlan();
    const line = json.line.map((one) =>
      one.kind === "chain" ? { ...one, pitch: "0.2 m", stations: [{ ...one.stations![0], at: "0.6 m" }] } : one,
    );
    const stations = (planOf({ ...json, line, sources: [] }).line[2] as Chain).stations;
    expect(stations[0]?.at).toBe(3);
  });

  it("carries over all that a station on a chain has", () => {
    expect(chain.stations[1]).toEqual({
      name: "pre-loosening",
      at: 25,
      window: 6,
      ifUnfinished: "pass",
      positions: 2,
      pace: [],
      cycleSeconds: always(8),
      weightFactor: { perKg: 0.1, atKg: 2.5 },
      crews: ["dressing", "relief"],
      peoplePerPosition: 1,
      breakdowns: [
        {
          name: "knife",
          clock: "running",
          scope: "position",
          uptimeSeconds: always(10800),
          repairSeconds: always(60),
          crew: null,
          headInHand: "resume",
        },
      ],
      byProducts: [],
      utilities: { ...NOTHING, energyPerHead: 0.001, powerKilowatts: 0.2 },
      capital: { price: 3000, lifeYears: 8, daysPerYear: 250 },
      settings: [{ name: "air pressure", value: "6 bar", source: "invented" }],
    });
  });

  it("sends heads where the file says", () => {
    expect(stage("skinning machine")).toMatchObject({
      next: "evisceration",
      weights: { fromKg: 1.8, toKg: 3.2, else: "hand skinning" },
      weightFactor: { perKg: 0.2, atKg: 2.5 },
      breakdowns: [
        { name: "jam", crew: "maintenance", headInHand: { to: "hand skinning" } },
        { name: "drive", crew: null, headInHand: "resume" },
      ],
    });
    expect(stage("inspection")?.diversions).toEqual([{ to: "trim", share: 0.02 }]);
    expect(stage("trim")).toMatchObject({ offLine: true, next: "inspection", buffer: Number.POSITIVE_INFINITY });
  });

  it("knows what a stage takes off, uses, costs and is set to", () => {
    expect(stage("stunning")).toMatchObject({
      utilities: { ...NOTHING, energyPerHead: 0.02, powerKilowatts: 1.5 },
      capital: { price: 24000, lifeYears: 10, daysPerYear: 250 },
      settings: [{ name: "stunning current", value: "as on the plate", source: "maker's manual (invented)" }],
    });
    expect(stage("evisceration")?.utilities).toEqual({ ...NOTHING, waterPerHead: 3, waterPerHour: 200 });
    expect(stage("trim")?.byProducts).toEqual([{ name: "trimmings", share: 0.02, of: "what is left", vessel: null }]);
    expect(stage("skinning machine")?.byProducts).toEqual([
      { name: "skins", share: 0.15, of: "live weight", vessel: "skin bin" },
    ]);
  });

  it("has the figures that a computed chilling time needs", () => {
    expect(stage("chilling")).toMatchObject({
      places: 2400,
      headsPerHook: 4,
      dwell: {
        kind: "chilling",
        chilling: {
          startCelsius: 37,
          airCelsius: 0,
          coreCelsius: 4,
          airMetresPerSecond: 2,
          carcassLengthMetres: 0.36,
          carcassShare: 0.56,
          conductivity: 0.5,
          density: 1060,
          specificHeat: 3400,
        },
      },
    });
  });

  it("takes the properties of lean meat where the file names none", () => {
    const chilling = {
      air: "0 degC",
      core: "4 degC",
      airSpeed: "2 m/s",
      carcassLength: "0.36 m",
      carcassShare: "56 %",
    };
    const line = wholePlan().line.map((one) => (one.name === "chilling" ? { ...one, chilling } : one));
    expect(planOf({ ...wholePlan(), line }).line.at(-1)).toMatchObject({
      dwell: { chilling: { startCelsius: 38, conductivity: 0.48, density: 1070, specificHeat: 3500 } },
    });
  });

  it("has speeds by the hour, in seconds after the day's start", () => {
    const plan = planOf({ ...wholePlan(), day: { ...wholePlan().day, start: "05:00" } });
    expect(plan.line[0]).toMatchObject({
      pace: [
        { fromSeconds: 1800, speed: 0.8, mostPerSecond: null },
        { fromSeconds: 5400, speed: 1, mostPerSecond: 700 / 3600 },
      ],
    });
  });

  it("has breakdowns that stop several stages, with help at hand where no crew is named", () => {
    expect(planOf(wholePlan()).sharedBreakdowns).toEqual([
      {
        name: "control board",
        stops: ["skinning machine", "kill chain", "restacking"],
        clock: "all running",
        uptimeSeconds: { family: "exponential", mean: 21_600 },
        repairSeconds: { family: "constant", value: 300 },
        crew: "maintenance",
      },
      {
        name: "power",
        stops: ["stunning", "kill chain"],
        clock: "calendar",
        uptimeSeconds: { family: "constant", value: 72_000 },
        repairSeconds: { family: "constant", value: 120 },
        crew: null,
      },
    ]);
  });

  it("has gates, vessels, money and what is sold", () => {
    expect(plan.gates).toEqual([
      { name: "room to stick", from: "stunning", to: { stage: "sticking", moment: "start" }, atMost: 4 },
    ]);
    expect(plan.vessels).toEqual([
      {
        name: "blood tank",
        capacityKg: 800,
        emptyAtKg: 700,
        emptyingSeconds: 600,
        crew: "maintenance",
        whenFull: "stop",
      },
      { name: "skin bin", capacityKg: 200, emptyAtKg: 200, emptyingSeconds: 120, crew: null, whenFull: "spill" },
      {
        name: "viscera bin",
        capacityKg: 300,
        emptyAtKg: 300,
        emptyingSeconds: 180,
        crew: "dressing",
        whenFull: "stop",
      },
    ]);
    expect(plan.money).toEqual({
      currency: "EUR",
      waterPerLitre: 0.002,
      wasteWaterPerLitre: 0.003,
      energyPerKilowattHour: 0.25,
      fuelPerKilowattHour: 0,
      overtimeFactor: 1.5,
      livePricePerKg: 2.1,
      plantCosts: null,
      pricesPerKg: { carcass: 6.5, skins: -0.05, condemned: -0.2 },
    });
    expect(plan.dressing).toBe("");
    expect(plan.presentation).toEqual({
      head: "on",
      paws: "off",
      liver: "off",
      kidneys: "on",
      heartAndLungs: "off",
      weighed: "cold",
      liveWeight: "slaughter",
      chillLossShare: null,
      journeyLossShare: null,
      yield: null,
    });
    expect(plan.bodyParts).toBeNull();
  });

  it("reckons nothing that only a currency was given for", () => {
    expect(planOf({ ...wholePlan(), money: { currency: "EUR" } }).money).toEqual({
      currency: "EUR",
      waterPerLitre: 0,
      wasteWaterPerLitre: 0,
      energyPerKilowattHour: 0,
      fuelPerKilowattHour: 0,
      overtimeFactor: 1,
      livePricePerKg: null,
      plantCosts: null,
      pricesPerKg: {},
    });
  });
});
