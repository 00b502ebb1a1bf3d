import { expect, it } from "vitest";
import { moistAir } from "../../../../sim/maths/chilling/index.ts";

// From a property library, one atmosphere.
it.each([
  [15, 0.7, 33.9119, 1.220124],
  [2, 0.85, 11.3265, 1.280798],
])("air of %f degC and %f: enthalpy and density within 0.1 %%", (celsius, humidity, enthalpy, density) => {
  const found = moistAir(celsius, humidity);
  expect(Math.abs(found.enthalpy / enthalpy - 1)).toBeLessThan(0.001);
  expect(Math.abs(found.density / density - 1)).toBeLessThan(0.001);
});

it("moist air is lighter than dry air, and dry air at 0 degC has no enthalpy", () => {
  expect(moistAir(0, 0).enthalpy).toBe(0);
  expect(moistAir(25, 0.9).density).toBeLessThan(moistAir(25, 0).density);
});
