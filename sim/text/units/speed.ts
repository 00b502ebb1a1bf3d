import type { UnitFamily } from "./unitFamily.ts";

/** Speeds of chains and air, read as metres per second. */
export const speed: UnitFamily = {
  name: "a speed",
  si: "m/s",
  example: "3.5 m/min",
  units: { "m/min": [1, 60], "m/s": [1, 1] },
  otherSpellings: { "m/m": "m/min", "m per min": "m/min", mps: "m/s", "m per s": "m/s" },
  least: 0,
  printed: ["m/min", "m/s"],
};
