import { describe, expect, it } from "vitest";
import { sizeChiller, sizeDwells } from "../../../sim/size/sizeDwells.ts";
import { demandOf } from "../../support/demands.ts";

const animals = { condemned: 0, deadOnArrival: 0, toTrim: 0, liveWeight: "2.5 kg" };
const rate = { designHeadsPerSecond: 0.2, carcassesPerDay: 100_000, hangingSeconds: 25_000 };

describe("sizeDwells", () => {
  it("holds the heads that come while one stays, travels and while the next station pauses (Little 1961)", () => {
    const demand = demandOf({
      animals,
      steps: { bleeding: { dwell: "120 s" }, sticking: { travel: "5 s" } },
      line: { cover: "20 s" },
    });
    expect(sizeDwells(demand, 0.2, [])).toEqual([{ name: "bleeding", seconds: 120, places: 29 }]);
  });

  it("has a place for every head that is being stunned or stuck", () => {
    const station = {
      section: "kill",
      work: "manual",
      cycleSeconds: 4,
      peoplePerPosition: 1,
      crew: "x",
      load: 0.5,
      places: 0,
    } as const;
    const stations = [
      { ...station, name: "stunning", positions: 2 },
      { ...station, name: "sticking", positions: 2 },
    ];
    const demand = demandOf({ animals });
    expect(sizeDwells(demand, 0.2, stations)[0]!.places).toBe(sizeDwells(demand, 0.2, [])[0]!.places + 4);
  });

  it("takes places as they are given", () => {
    expect(sizeDwells(demandOf({ steps: { bleeding: { places: 12 } } }), 0.2, [])[0]!.places).toBe(12);
  });
});

describe("sizeChiller", () => {
  it("has so many hooks that a carcass of one weight finds a place (Little 1961), and spare ones", () => {
    const demand = demandOf({ animals, chilling: { spare: "10 %", headsPerHook: 4 } });
    const { seconds, hooks, places, meanKilowatts, peakKilowatts } = sizeChiller(demand, rate)!;
    expect(hooks).toBe(Math.ceil((0.2 * seconds * 1.1) / 4));
    expect(places).toBe(hooks * 4);
    expect(meanKilowatts).toBeGreaterThan(0);
    expect(peakKilowatts).toBeGreaterThan(0);
  });

  it("needs more places where weights differ, and none for more carcasses than a day has", () => {
    const same = sizeChiller(demandOf({ animals }), rate)!;
    const different = sizeChiller(
      demandOf({ animals: { ...animals, liveWeight: { normal: { mean: "2.5 kg", sd: "0.2 kg" } } } }),
      rate,
    )!;
    expect(different.places).toBeGreaterThan(same.places);
    expect(sizeChiller(demandOf({ animals, chilling: { spare: 0 } }), { ...rate, carcassesPerDay: 600 })!.places).toBe(
      600,
    );
  });

  it("is not there where the plant does without it", () => {
    expect(sizeChiller(demandOf({ steps: { chilling: { leftOut: true } } }), rate)).toBeNull();
  });
});
