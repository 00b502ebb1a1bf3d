import type { UnitFamily } from "./unitFamily.ts";

/** Specific heat capacities, read as joules per kilogram and kelvin. */
export const specificHeat: UnitFamily = {
  name: "a specific heat capacity",
  si: "J/(kg K)",
  example: "3500 J/(kg K)",
  units: { "J/(kg K)": [1, 1], "kJ/(kg K)": [1000, 1] },
  otherSpellings: {
    "J/kgK": "J/(kg K)",
    "J/kg K": "J/(kg K)",
    "J/(kgK)": "J/(kg K)",
    "J/(kg·K)": "J/(kg K)",
    "kJ/kgK": "kJ/(kg K)",
    "kJ/kg K": "kJ/(kg K)",
    "kJ/(kgK)": "kJ/(kg K)",
    "kJ/(kg·K)": "kJ/(kg K)",
  },
  least: 0,
  printed: ["J/(kg K)"],
};
