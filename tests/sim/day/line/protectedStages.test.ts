import { describe, expect, it } from "vitest";
import { steps } from "../../../../sim/day/line/index.ts";
import { protectedStages } from "../../../../sim/day/line/protectedStages.ts";
import { chain, onChain, planOf, saturated, station } from "../../../support/plans.ts";
import { withDay } from "../../../support/withDay.ts";

const plan = planOf(saturated(1), [
  station("a", 1),
  station("stun", 1),
  chain("c", 4, 1, [onChain("stick", 0, 1, 1), onChain("skin", 2, 1, 1)]),
]);

describe("protectedStages", () => {
  it("are those from the stretch's first stage to its last, both included", () => {
    const safe = withDay(plan, { safeStop: { from: "stun", to: "stick" } });
    // a, stun, c, stick, skin.
    expect(protectedStages(safe, steps(safe))).toEqual([false, true, true, true, false]);
  });

  it("are none without a stretch", () => {
    expect(protectedStages(plan, steps(plan))).toEqual(Array(5).fill(false));
  });
});
