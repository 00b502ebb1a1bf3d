import type { UnitFamily } from "./unitFamily.ts";

/** Lengths, read as metres. An inch is exactly 25.4 mm (international yard and pound agreement, 1959). */
export const length: UnitFamily = {
  name: "a length",
  si: "m",
  example: "12 m",
  units: { mm: [1, 1000], cm: [1, 100], in: [254, 10000], m: [1, 1] },
  otherSpellings: { metre: "m", metres: "m", meter: "m", meters: "m", inch: "in", inches: "in", '"': "in" },
  least: 0,
  printed: ["mm", "m"],
};
