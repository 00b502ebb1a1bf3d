import type { UnitFamily } from "./unitFamily.ts";

/** Masses, read as kilograms. */
export const mass: UnitFamily = {
  name: "a mass",
  si: "kg",
  example: "2.4 kg",
  units: { g: [1, 1000], kg: [1, 1], t: [1000, 1] },
  otherSpellings: { gram: "g", grams: "g", kilo: "kg", kilos: "kg", Kg: "kg", KG: "kg", tonne: "t", tonnes: "t" },
  least: 0,
  printed: ["g", "kg", "t"],
};
