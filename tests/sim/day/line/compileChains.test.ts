import { describe, expect, it } from "vitest";
import { compileLine, NO_LIMIT } from "../../../../sim/day/line/index.ts";
import { chain, onChain, planOf, saturated, station } from "../../../support/plans.ts";

describe("compileChains", () => {
  it("keeps each chain's ring and, by stage, the windows of the stations on it", () => {
    const line = [
      station("a", 1),
      chain("c", 9, 2, [onChain("v", 0, 2, 1), onChain("w", 4, 3, 1, { ifUnfinished: "pass" })], {
        unfinishedTo: "trim",
      }),
      chain("d", 5, 3, [], { shackles: { count: 7, backSeconds: 60 } }),
      station("trim", 1, { offLine: true }),
    ];
    const { chains, stages } = compileLine(planOf(saturated(1), line));
    expect(stages.names).toEqual(["a", "c", "v", "w", "d", "trim"]);
    expect(Array.from(chains.stage)).toEqual([1, 4]);
    expect(Array.from(chains.stationCount)).toEqual([2, 0]);
    expect(Array.from(chains.places)).toEqual([9, 5]);
    expect(Array.from(chains.shackles)).toEqual([NO_LIMIT, 7]);
    expect(Array.from(chains.backSeconds)).toEqual([0, 60]);
    expect(Array.from(chains.unfinishedTo)).toEqual([5, -1]);
    expect(Array.from(chains.windowFrom)).toEqual([-1, -1, 0, 4, -1, -1]);
    expect(Array.from(chains.windowTo)).toEqual([-1, -1, 2, 7, -1, -1]);
    expect(Array.from(chains.stops)).toEqual([0, 0, 1, 0, 0, 0]);
    expect(Array.from(stages.chain)).toEqual([-1, 0, 0, 0, 1, -1]);
  });
});
