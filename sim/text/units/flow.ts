import type { UnitFamily } from "./unitFamily.ts";

/** Flows of water, read as cubic metres per second. */
export const flow: UnitFamily = {
  name: "a flow",
  si: "m3/s",
  example: "200 L/h",
  units: {
    "L/h": [1, 3_600_000],
    "L/min": [1, 60_000],
    "m3/h": [1, 3600],
    "m³/h": [1, 3600],
    "L/s": [1, 1000],
    "m3/s": [1, 1],
  },
  otherSpellings: { "l/h": "L/h", "l/min": "L/min", "l/s": "L/s", "L per hour": "L/h", lpm: "L/min" },
  least: 0,
  printed: ["L/h", "m3/h"],
};
