import { describe, expect, it } from "vitest";
import type { ByProduct, Vessel } from "../../../../sim/asked/plan/plan.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { chain, onChain, planOf, saturated, station } from "../../../support/plans.ts";

const takesOff = (name: string, vessel: string | null, of: ByProduct["of"] = "live weight"): ByProduct[] => [
  { name, share: 0.1, of, vessel },
];
const vessel = (name: string, whenFull: Vessel["whenFull"]): Vessel => ({
  name,
  capacityKg: 10,
  emptyAtKg: 8,
  emptyingSeconds: 5,
  crew: null,
  whenFull,
});

const line = [
  station("a", 1, { byProducts: takesOff("blood", "tank") }),
  chain("c", 4, 1, [onChain("w", 0, 1, 1, { byProducts: takesOff("skin", "bin") })], {
    byProducts: takesOff("drip", null, "what is left"),
  }),
  station("b", 1, { byProducts: takesOff("blood", "tank") }),
];
const compiled = compileLine(planOf(saturated(1), line, { vessels: [vessel("tank", "stop"), vessel("bin", "spill")] }));

describe("compileProducts", () => {
  it("names everything once, in the order in which the line first meets it", () => {
    expect(compiled.productNames).toEqual(["blood", "drip", "skin"]);
    expect(Array.from(compiled.stages.productName)).toEqual([0, 1, 2, 0]);
    expect(Array.from(compiled.stages.productOfLive)).toEqual([1, 0, 1, 1]);
    expect(Array.from(compiled.stages.productVessel)).toEqual([0, -1, 1, 0]);
  });

  it("lets a stage be stopped only by vessels that do not spill", () => {
    expect(Array.from(compiled.stages.vesselFrom)).toEqual([0, 1, 1, 1, 2]);
    expect(Array.from(compiled.stages.vessel)).toEqual([0, 0]);
  });
});
