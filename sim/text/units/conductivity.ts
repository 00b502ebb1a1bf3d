import type { UnitFamily } from "./unitFamily.ts";

/** Thermal conductivities, read as watts per metre and kelvin. */
export const conductivity: UnitFamily = {
  name: "a thermal conductivity",
  si: "W/(m K)",
  example: "0.48 W/(m K)",
  units: { "W/(m K)": [1, 1] },
  otherSpellings: { "W/mK": "W/(m K)", "W/m K": "W/(m K)", "W/(mK)": "W/(m K)", "W/(m·K)": "W/(m K)" },
  least: 0,
  printed: ["W/(m K)"],
};
