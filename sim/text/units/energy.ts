import type { UnitFamily } from "./unitFamily.ts";

/** Energies, read as joules. A watt hour is 3,600 J. */
export const energy: UnitFamily = {
  name: "an energy",
  si: "J",
  example: "0.02 kWh",
  units: { J: [1, 1], kJ: [1000, 1], Wh: [3600, 1], MJ: [1_000_000, 1], kWh: [3_600_000, 1] },
  otherSpellings: { kwh: "kWh", KWh: "kWh", KWH: "kWh", wh: "Wh", joule: "J", joules: "J" },
  least: 0,
  printed: ["Wh", "kWh"],
};
