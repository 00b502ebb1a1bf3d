import type { UnitFamily } from "./unitFamily.ts";

/** Densities, read as kilograms per cubic metre. */
export const density: UnitFamily = {
  name: "a density",
  si: "kg/m3",
  example: "1070 kg/m3",
  units: { "kg/m3": [1, 1], "kg/m³": [1, 1], "kg/L": [1000, 1] },
  otherSpellings: { "kg/m^3": "kg/m3", "kg/l": "kg/L" },
  least: 0,
  printed: ["kg/m3"],
};
