import { describe, expect, it } from "vitest";
import type { Vessel } from "../../../../sim/asked/plan/plan.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { chain, crew, onChain, planOf, saturated, station } from "../../../support/plans.ts";

const into = (vessel: string) => [{ name: "blood", share: 0.1, of: "live weight" as const, vessel }];
const tank: Vessel = { name: "tank", capacityKg: 10, emptyAtKg: 8, emptyingSeconds: 5, crew: "yard", whenFull: "stop" };
const bin: Vessel = { ...tank, name: "bin", crew: null, whenFull: "spill" };

describe("compileVessels", () => {
  it("knows the stages that feed each vessel, who empties it, and whether it stops them", () => {
    const line = [
      station("a", 1, { byProducts: into("tank") }),
      chain("c", 4, 1, [onChain("w", 0, 1, 1, { byProducts: into("bin") })]),
      station("b", 1, { byProducts: into("tank") }),
    ];
    const { vessels } = compileLine(planOf(saturated(1), line, { vessels: [tank, bin], crews: [crew("yard", 1)] }));
    expect(vessels.names).toEqual(["tank", "bin"]);
    expect(Array.from(vessels.feederFrom)).toEqual([0, 2, 3]);
    // Stages: a 0, c 1, w 2, b 3.
    expect(Array.from(vessels.feeder)).toEqual([0, 3, 2]);
    expect(Array.from(vessels.stops)).toEqual([1, 0]);
    expect(Array.from(vessels.crew)).toEqual([0, -1]);
  });
});
