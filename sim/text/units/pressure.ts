import type { UnitFamily } from "./unitFamily.ts";

/** Pressures and pressure rises, read as pascals. */
export const pressure: UnitFamily = {
  name: "a pressure",
  si: "Pa",
  example: "150 Pa",
  units: { Pa: [1, 1], kPa: [1000, 1], bar: [100_000, 1] },
  otherSpellings: { pa: "Pa", pascal: "Pa", KPa: "kPa", kpa: "kPa", Bar: "bar" },
  least: 0,
  printed: ["Pa", "kPa", "bar"],
};
