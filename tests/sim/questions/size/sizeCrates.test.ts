import { describe, expect, it } from "vitest";
import { WAYS } from "../../../../sim/asked/plan/index.ts";
import { requiredRate } from "../../../../sim/questions/size/requiredRate.ts";
import { sizeCrateSteps, sizeCrates } from "../../../../sim/questions/size/sizeCrates.ts";
import { sizeCrews, sizeMaintenance } from "../../../../sim/questions/size/sizePlant.ts";
import { NOTHING_EXTRA, sizeStations } from "../../../../sim/questions/size/sizeStations.ts";
import { sizeUtilities } from "../../../../sim/questions/size/sizeUtilities.ts";
import { demandOf } from "../../../support/demands.ts";

const demand = demandOf({
  week: { heads: 22_000, days: 5 },
  crates: {
    headsPerCrate: 10,
    perLorry: 50,
    lead: "30 min",
    delay: "10 min",
    away: "2 h",
    handling: { "hand-slid": { washing: { time: "30 s" }, restacking: { time: "20 s" } } },
  },
});

const byHand = demand.handling["hand-slid"];

describe("sizeCrates", () => {
  it("brings the day's heads in equal loads, one as soon as the one before is hung", () => {
    const rate = requiredRate(demand);
    const { lorries, cratesPerLorry, perDay, everySeconds } = sizeCrates(demand, rate, byHand);
    expect([lorries, cratesPerLorry, perDay]).toEqual([9, 49, 441]);
    expect(everySeconds).toBeCloseTo(rate.hangingSeconds / 9, 9);
  });

  it("has places for a load and for what comes before the first head, and crates for those at the plant and away (Little 1961)", () => {
    const rate = requiredRate(demand);
    const perSecond = rate.headsPerSecond / 10;
    const { lairageCrates, fleet, everySeconds } = sizeCrates(demand, rate, byHand);
    expect(lairageCrates).toBe(Math.ceil(49 + perSecond * 2400));
    expect(fleet).toBe(Math.min(441, Math.ceil(perSecond * (2400 + everySeconds + 50 + 7200)) + 49));
  });
});

describe("sizeCrateSteps and sizeCrews", () => {
  it("let a crew share its crate steps, as many people as the work takes", () => {
    const steps = sizeCrateSteps(demand, 0.2, byHand);
    expect(steps.find(({ name }) => name === "washing")).toMatchObject({
      crew: "crate return",
      positions: 1,
      places: null,
    });
    const crew = sizeCrews(demand, steps, 0.2).find(({ name }) => name === "crate return")!;
    expect(crew.people).toBe(Math.ceil((0.02 * 50) / 0.85));
    expect(crew.load * crew.people).toBeCloseTo(1, 9);
  });

  it("handle crates so many at once, by machines where nobody is at them, repairs counted", () => {
    const breakdowns = [{ name: "askew", uptime: "190 s", repair: "10 s" }];
    const feeding = { time: "36 s", cratesAtOnce: 4, people: 0, breakdowns };
    const given = demandOf({ crates: { headsPerCrate: 10, handling: { automatic: { feeding } } } });
    const steps = sizeCrateSteps(given, 1, given.handling.automatic);
    const machine = steps.find(({ name }) => name === "feeding")!;
    expect(machine).toMatchObject({ crew: null, peoplePerPosition: 0, cratesAtOnce: 4, positions: 2 });
    // 1 head/s is 0.1 crates/s, 0.025 cycles/s of 36 s, and 10 s of repair for 190 s of work.
    expect(machine.load).toBeCloseTo((0.025 * 36 * (20 / 19)) / 2, 12);
    expect(machine.repairLoad).toBeCloseTo((0.025 * 36) / 19, 12);
    expect(steps.map(({ name }) => name)).toEqual(["unloading", "feeding", "washing", "restacking", "palletsOut"]);
  });

  it("differ between the ways of live handling in times, positions, people, crates, water and power", () => {
    const rate = requiredRate(demand);
    const [byHandOnes, lift, automatic] = WAYS.map((way) => {
      const handling = demand.handling[way];
      const stations = sizeCrateSteps(demand, 0.6, handling);
      const crates = sizeCrates(demand, rate, handling);
      return {
        shown: stations.map(({ cycleSeconds, positions, peoplePerPosition }) => [
          cycleSeconds,
          positions,
          peoplePerPosition,
        ]),
        people: sizeCrews(demand, stations, 0.6).reduce((sum, crew) => sum + crew.people, 0),
        backSeconds: crates.backSeconds,
        fleet: crates.fleet,
        ...sizeUtilities(demand, rate, crates, { stations, handling, chiller: null }),
      };
    });
    for (const key of ["shown", "people", "backSeconds", "litresPerDay", "kilowatts"] as const) {
      expect(new Set([byHandOnes, lift, automatic].map((way) => JSON.stringify(way![key]))).size, key).toBe(3);
    }
    expect(byHandOnes!.people).toBeGreaterThan(lift!.people);
    expect(lift!.people).toBeGreaterThan(automatic!.people);
    expect(automatic!.fleet).toBeGreaterThan(lift!.fleet);
  });
});

describe("sizeMaintenance", () => {
  it("has somebody who repairs only where something breaks down, with the load of its jams", () => {
    expect(sizeMaintenance(demand, [])).toEqual([]);
    const breakdowns = [{ name: "jam", uptime: "100 s", repair: "40 s" }];
    const steps = { skinning: { cycle: "4 s", breakdowns }, "four-leg cutting": { breakdowns: [] } };
    const given = demandOf({ animals: { deadOnArrival: 0, condemned: 0, toTrim: 0 }, steps });
    const stations = sizeStations(given, 0.5, NOTHING_EXTRA);
    // 2 s of work a second, 0.4 s of repair for each.
    expect(sizeMaintenance(given, stations)).toMatchObject([{ name: "maintenance", people: 1, steps: ["skinning"] }]);
    expect(sizeMaintenance(given, stations)[0]!.load).toBeCloseTo(0.8, 9);
    const busier = sizeStations(given, 0.6, NOTHING_EXTRA);
    expect(sizeMaintenance(given, busier)[0]).toMatchObject({ people: 2 });
  });
});
