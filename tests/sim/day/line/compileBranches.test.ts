import { describe, expect, it } from "vitest";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";

describe("compileBranches", () => {
  it("adds up the shares of removals, then of diversions, within each stage", () => {
    const line = [
      station("a", 1, {
        removals: [
          { as: "condemned", share: 0.1 },
          { as: "sample", share: 0.05 },
        ],
        diversions: [{ to: "trim", share: 0.25 }],
      }),
      station("b", 1),
      station("trim", 1, { offLine: true }),
    ];
    const { stages, destinationNames } = compileLine(planOf(saturated(1), line));
    expect(destinationNames).toEqual(["carcass", "condemned", "sample"]);
    expect(Array.from(stages.branchFrom)).toEqual([0, 3, 3, 3]);
    // Destinations by their number; a stage as -1 less its number.
    expect(Array.from(stages.branchTo)).toEqual([1, 2, -3]);
    [0.1, 0.15, 0.4].forEach((share, row) => {
      expect(stages.branchShare[row]).toBeCloseTo(share, 12);
    });
  });
});
