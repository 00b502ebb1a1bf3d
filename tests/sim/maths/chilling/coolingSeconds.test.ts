import { describe, expect, it } from "vitest";
import { type CoolingBody, coolingSeconds } from "../../../../sim/maths/chilling/index.ts";

const BODY: CoolingBody = {
  shape: "cylinder",
  radius: 0.03,
  surfaceCoefficient: 20,
  conductivity: 0.48,
  density: 1070,
  specificHeat: 3500,
};

describe("coolingSeconds", () => {
  it("takes no time where it is cold already, and for ever where the air is not colder", () => {
    expect(coolingSeconds(BODY, 4, 4, 0)).toBe(0);
    expect(coolingSeconds(BODY, 3, 4, 5)).toBe(0);
    expect(coolingSeconds(BODY, 39, 4, 4)).toBe(Number.POSITIVE_INFINITY);
  });

  it("takes longer for a thicker body, in warmer or slower air, and to a colder core", () => {
    const usual = coolingSeconds(BODY, 39, 4, 0);
    expect(coolingSeconds({ ...BODY, radius: 0.031 }, 39, 4, 0)).toBeGreaterThan(usual);
    expect(coolingSeconds({ ...BODY, surfaceCoefficient: 19 }, 39, 4, 0)).toBeGreaterThan(usual);
    expect(coolingSeconds(BODY, 39, 4, 1)).toBeGreaterThan(usual);
    expect(coolingSeconds(BODY, 39, 3, 0)).toBeGreaterThan(usual);
  });

  it("depends on temperatures only by their ratio", () => {
    expect(coolingSeconds(BODY, 78, 8, 0) / coolingSeconds(BODY, 39, 4, 0)).toBeCloseTo(1, 12);
  });
});
