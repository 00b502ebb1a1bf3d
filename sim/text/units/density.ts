import type { UnitFamily } from "./unitFamily.ts";

/** Densities and concentrations, read as kilograms per cubic metre. */
export const density: UnitFamily = {
  name: "a density",
  si: "kg/m3",
  example: "1070 kg/m3",
  units: { "kg/m3": [1, 1], "kg/m³": [1, 1], "kg/L": [1000, 1], "g/L": [1, 1], "mg/L": [1, 1000] },
  otherSpellings: { "kg/m^3": "kg/m3", "kg/l": "kg/L", "g/l": "g/L", "mg/l": "mg/L" },
  least: 0,
  printed: ["kg/m3"],
};
