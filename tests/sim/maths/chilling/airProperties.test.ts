import { describe, expect, it } from "vitest";
import { airProperties } from "../../../../sim/maths/chilling/index.ts";

/** Incropera and DeWitt, table A.4, dry air at one atmosphere (from memory): kelvin, 1e-6 m2/s, 1e-3 W/(m K), 1e-3 (Prandtl). */
const TABLE = [
  [250, 11.44, 22.3, 720],
  [300, 15.89, 26.3, 707],
] as const;

describe("airProperties", () => {
  it.each(TABLE)("agrees at %d K with the table to 2 %%", (kelvin, viscosity, conductivity, prandtl) => {
    const air = airProperties(kelvin - 273.15);
    expect(Math.abs(air.viscosity / (viscosity * 1e-6) - 1)).toBeLessThan(0.02);
    expect(Math.abs(air.conductivity / (conductivity * 1e-3) - 1)).toBeLessThan(0.02);
    expect(Math.abs(air.prandtl / (prandtl * 1e-3) - 1)).toBeLessThan(0.02);
  });
});
