import { describe, expect, it } from "vitest";
import { sizeChiller, sizeDwells } from "../../../../sim/questions/size/sizeDwells.ts";
import { NOTHING_EXTRA, sizeStations } from "../../../../sim/questions/size/sizeStations.ts";
import { demandOf } from "../../../support/demands.ts";

const animals = { condemned: 0, deadOnArrival: 0, toTrim: 0, liveWeight: "2.5 kg" };
const rate = { designHeadsPerSecond: 0.2, carcassesPerDay: 100_000, hangingSeconds: 25_000 };
/** Loads of one crate, so that they ask for no more than the rate does. */
const filling = { rate, crates: { heads: 100_000, lorries: 100_000, everySeconds: 25_000 }, stations: [] };

describe("sizeDwells", () => {
  it("holds the heads that come while one stays, travels and while the next station pauses (Little 1961)", () => {
    const demand = demandOf({
      animals,
      steps: { bleeding: { dwell: "120 s" }, sticking: { travel: "5 s" } },
      line: { cover: "20 s" },
    });
    expect(sizeDwells(demand, 0.2, [])).toMatchObject([{ name: "bleeding", seconds: 120, places: 29, reserved: 0 }]);
  });

  it("has a place for every head that is being stunned or stuck", () => {
    const two = { positions: 2 };
    const demand = demandOf({ animals, steps: { stunning: two, sticking: two } });
    const stations = sizeStations(demand, 0.2, NOTHING_EXTRA);
    expect(sizeDwells(demand, 0.2, stations)[0]!.places).toBe(sizeDwells(demand, 0.2, [])[0]!.places + 4);
  });

  it("takes places as they are given", () => {
    expect(sizeDwells(demandOf({ steps: { bleeding: { places: 12 } } }), 0.2, [])[0]!.places).toBe(12);
  });
});

describe("sizeChiller", () => {
  it("has so many hooks that a carcass of one weight finds a place (Little 1961), and spare ones", () => {
    const demand = demandOf({ animals, chilling: { spare: "10 %", headsPerHook: 4 } });
    const { seconds, hooks, places, meanKilowatts, peakKilowatts } = sizeChiller(demand, filling)!;
    expect(hooks).toBe(Math.ceil((0.2 * seconds * 1.1) / 4));
    expect(places).toBe(hooks * 4);
    expect(meanKilowatts).toBeGreaterThan(0);
    expect(peakKilowatts).toBeGreaterThan(0);
  });

  it("needs more places where weights differ, and none for more carcasses than a day has", () => {
    const same = sizeChiller(demandOf({ animals }), filling)!;
    const different = sizeChiller(
      demandOf({ animals: { ...animals, liveWeight: { normal: { mean: "2.5 kg", sd: "0.2 kg" } } } }),
      filling,
    )!;
    expect(different.places).toBeGreaterThan(same.places);
    expect(
      sizeChiller(demandOf({ animals, chilling: { spare: 0 } }), {
        ...filling,
        rate: { ...rate, carcassesPerDay: 600 },
      })!.places,
    ).toBe(600);
  });

  it("holds the loads that a line faster than the rate works off meanwhile", () => {
    const demand = demandOf({ animals, chilling: { spare: 0, headsPerHook: 1 } });
    const stay = sizeChiller(demand, filling)!.staySeconds;
    const stations = sizeStations(demand, 1, NOTHING_EXTRA);
    const slow = { ...rate, designHeadsPerSecond: 0.01 };
    // One load and, while the carcass stays for another tenth of the time between loads, as much of the next as the line can hang.
    const crates = { heads: 4000, lorries: 10, everySeconds: stay / 1.1 };
    const fastest = Math.min(
      ...stations.map(
        ({ positions, cycleSeconds, visitsPerHead, repairShare }) =>
          positions / (cycleSeconds * visitsPerHead * (1 + repairShare)),
      ),
    );
    const found = sizeChiller(demand, { rate: slow, crates, stations })!;
    expect(found.fromLoads).toBeCloseTo(400 + Math.min(400, fastest * (stay - stay / 1.1)), 6);
    expect(found.hooks).toBe(Math.ceil(found.fromLoads));
  });

  it("is not there where the plant does without it", () => {
    expect(sizeChiller(demandOf({ steps: { chilling: { leftOut: true } } }), filling)).toBeNull();
  });
});
