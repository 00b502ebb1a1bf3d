import { expect, it } from "vitest";
import { keptParts } from "../../../../../sim/asked/plan/presentation/keptParts.ts";

const OFF = { head: "off", paws: "off", liver: "off", kidneys: "off", heartAndLungs: "off" } as const;

it("keeps what is on, paws in two pairs, and never blood, skin or gut", () => {
  expect(keptParts(OFF)).toEqual([]);
  expect(keptParts({ ...OFF, paws: "on" })).toEqual(["forePaws", "hindPaws"]);
  expect(keptParts({ head: "on", paws: "on", liver: "on", kidneys: "on", heartAndLungs: "on" })).toEqual([
    "head",
    "forePaws",
    "hindPaws",
    "liver",
    "kidneys",
    "heartAndLungs",
  ]);
});
