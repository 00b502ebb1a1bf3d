import { describe, expect, it } from "vitest";
import {
  type CoolingBody,
  coolingSeconds,
  meanTemperature,
  temperatureAt,
} from "../../../../sim/maths/chilling/index.ts";

const BODY: CoolingBody = {
  shape: "sphere",
  radius: 0.03,
  surfaceCoefficient: 20,
  conductivity: 0.48,
  density: 1070,
  specificHeat: 3500,
};

describe("temperatureAt", () => {
  it("has the core at the temperature that coolingSeconds was asked for", () => {
    expect(temperatureAt(BODY, "centre", coolingSeconds(BODY, 39, 4, -1), 39, -1)).toBeCloseTo(4, 11);
  });

  it("loses heat at the rate that the surface gives to the air", () => {
    // density x specific heat x d(mean)/dt = -h x (surface - air) x area / volume, which is 3 / radius.
    const rate = (meanTemperature(BODY, 3001, 39, 0) - meanTemperature(BODY, 2999, 39, 0)) / 2;
    const given = (-20 * temperatureAt(BODY, "surface", 3000, 39, 0) * 3) / 0.03 / (1070 * 3500);
    expect(rate / given).toBeCloseTo(1, 6);
  });

  it("refuses a time that is too early for the series", () => {
    expect(() => temperatureAt(BODY, "mean", 1, 39, 0)).toThrow(RangeError);
    expect(() => temperatureAt(BODY, "mean", Number.NaN, 39, 0)).toThrow(RangeError);
  });
});
