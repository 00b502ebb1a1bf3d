import type { UnitFamily } from "./unitFamily.ts";

/** Temperatures, read as degrees Celsius (itself an SI unit; SI Brochure, 9th edition, Table 4). */
export const temperature: UnitFamily = {
  name: "a temperature",
  si: "°C",
  example: "4 °C",
  units: { "°C": [1, 1], degC: [1, 1] },
  otherSpellings: { C: "°C", c: "°C", "deg C": "°C", celsius: "°C", Celsius: "°C" },
  least: -273.15,
  printed: ["°C"],
};
