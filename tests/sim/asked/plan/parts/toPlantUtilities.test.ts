import { describe, expect, it } from "vitest";
import { idealAirWork } from "../../../../../sim/asked/plan/parts/toPlantUtilities.ts";
import { readExample } from "../../../../support/readExample.ts";

describe("what the plant uses beside its stages", () => {
  // One stage, adiabatic, k 1.4, inlet 1.01325 bar: textbook formula.
  it.each([
    [7, 0.073256],
    [8, 0.079936],
  ])("compresses a cubic metre of free air to %i times its pressure with %f kWh", (ratio, expected) => {
    expect(Math.abs(idealAirWork(ratio) / expected - 1)).toBeLessThan(1e-4);
  });

  it("is in litres, kilowatts and kilowatt-hours", () => {
    const { utilities } = readExample("parts/utilities").plan;
    expect(utilities).toMatchObject({ coldCelsius: 10, codPerLitre: 0.003, codRemovedShare: 0.3 });
    expect(utilities!.fuelPerHeat).toBeCloseTo(0.75 / 0.9, 10);
    // Real compressors: about 0.10 to 0.12 kWh for a cubic metre (common practice, no source).
    expect(utilities!.kilowattHoursPerAir).toBeGreaterThan(0.1);
    expect(utilities!.kilowattHoursPerAir).toBeLessThan(0.12);
    expect(utilities!.consumers[0]).toEqual({
      name: "tool sterilisers",
      during: "work",
      waterPerHead: 0,
      waterPerHour: 100,
      waterPerDay: 0,
      celsius: 82,
      airPerHour: 0,
      powerKilowatts: 0,
    });
    expect(utilities!.consumers[1]).toMatchObject({ during: "cleaning", waterPerDay: 1000, celsius: 60 });
    expect(utilities!.consumers[3]).toMatchObject({ airPerHour: 20, celsius: null });
  });
});
