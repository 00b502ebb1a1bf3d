import type { UnitFamily } from "./unitFamily.ts";

/** Powers and heat loads, read as watts. */
export const power: UnitFamily = {
  name: "a power",
  si: "W",
  example: "3 kW",
  units: { W: [1, 1], kW: [1000, 1] },
  otherSpellings: { w: "W", watt: "W", watts: "W", kw: "kW", KW: "kW" },
  least: 0,
  printed: ["W", "kW"],
};
