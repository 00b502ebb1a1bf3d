import { describe, expect, it } from "vitest";
import { inWorld } from "../../../../../sim/asked/plan/index.ts";

const PLAN = {
  uncertain: [{ name: "a" }],
  line: [
    { name: "skinning", cycle: { lognormal: { mean: "5 s", cv: 0.3 } }, breakdowns: [{ name: "jam", repair: "60 s" }] },
  ],
};

describe("inWorld", () => {
  it("multiplies each figure where it stands, leaves the plan as it was, and has nothing uncertain", () => {
    const before = structuredClone(PLAN);
    const { json, faults } = inWorld(PLAN, [
      { paths: ["line.skinning.cycle", "line[0].breakdowns.jam.repair"], factors: [1.2, 2] },
      { paths: ["line.skinning.cycle.lognormal.cv"], factors: [0.5] },
    ]);
    expect(faults).toEqual([]);
    expect(json).toEqual({
      line: [
        {
          name: "skinning",
          cycle: { lognormal: { mean: "6 s", cv: 0.15 } },
          breakdowns: [{ name: "jam", repair: "120 s" }],
        },
      ],
    });
    expect(PLAN).toEqual(before);
  });

  it("tells of every path that leads nowhere or to no figure", () => {
    const { faults } = inWorld(PLAN, [
      { paths: ["line.skining.cycle", "line.skinning.name", "[["], factors: [1, 1, 1] },
    ]);
    expect(faults.map(({ path }) => path)).toEqual(["line.skining.cycle", "line.skinning.name", "[["]);
    expect(faults[0]!.remedy).toContain("skinning");
  });
});
