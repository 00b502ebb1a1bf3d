import type { UnitFamily } from "./unitFamily.ts";

/** Areas, read as square metres. */
export const area: UnitFamily = {
  name: "an area",
  si: "m2",
  example: "450 m2",
  units: { cm2: [1, 10_000], "cm²": [1, 10_000], m2: [1, 1], "m²": [1, 1] },
  otherSpellings: { "m^2": "m2", sqm: "m2", qm: "m2" },
  least: 0,
  printed: ["m2"],
};
