import type { UnitFamily } from "./unitFamily.ts";

/** Electric currents, read as amperes. Recorded as data only: no current is ever worked out or advised. */
export const current: UnitFamily = {
  name: "an electric current",
  si: "A",
  example: "400 mA",
  units: { mA: [1, 1000], A: [1, 1] },
  otherSpellings: { ma: "mA", amp: "A", amps: "A", ampere: "A", amperes: "A" },
  least: 0,
  printed: ["mA", "A"],
};
