import type { UnitFamily } from "./unitFamily.ts";

/** Volumes, read as cubic metres. */
export const volume: UnitFamily = {
  name: "a volume",
  si: "m3",
  example: "12 L",
  units: { mL: [1, 1_000_000], L: [1, 1000], m3: [1, 1], "m³": [1, 1] },
  otherSpellings: { ml: "mL", l: "L", litre: "L", litres: "L", liter: "L", liters: "L", "m^3": "m3", cbm: "m3" },
  least: 0,
  printed: ["mL", "L", "m3"],
};
