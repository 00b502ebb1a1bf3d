import { describe, expect, it } from "vitest";
import { headFlow } from "../../../../sim/questions/estimate/index.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";

describe("headFlow", () => {
  it("takes off what is removed", () => {
    const line = [station("a", 1, { removals: [{ as: "condemned", share: 0.1 }] }), station("b", 1)];
    const { visits, carcasses } = headFlow(planOf(saturated(9), line));
    expect(Object.fromEntries(visits)).toEqual({ a: 1, b: 0.9 });
    expect(carcasses).toBeCloseTo(0.9, 12);
  });

  it("follows heads to trim and back to the inspection, once and no more", () => {
    const line = [
      station("opening", 1),
      station("inspection", 1, {
        removals: [{ as: "condemned", share: 0.01 }],
        diversions: [{ to: "trim", share: 0.02 }],
      }),
      station("loading", 1),
      station("trim", 1, { offLine: true, next: "inspection" }),
    ];
    const { visits, carcasses } = headFlow(planOf(saturated(9), line));
    expect(visits.get("inspection")).toBeCloseTo(1.02, 12);
    expect(visits.get("trim")).toBeCloseTo(0.02, 12);
    expect(carcasses).toBeCloseTo(0.97 + 0.02 * 0.99, 12);
    expect(visits.get("loading")).toBeCloseTo(carcasses, 12);
  });

  it("sends heads of an off-line stage without a way of its own to the next one on the line", () => {
    const line = [
      station("skinning", 1, { diversions: [{ to: "by hand", share: 0.5 }] }),
      station("by hand", 1, { offLine: true }),
      station("cutting", 1),
    ];
    expect(headFlow(planOf(saturated(9), line)).visits.get("cutting")).toBeCloseTo(1, 12);
  });

  it("leaves those dead on arrival at the first stage, loads weighted by their heads", () => {
    const load = {
      atSeconds: 0,
      delay: null,
      comesShare: 1,
      headsPerCrate: 10,
      liveWeightKg: { family: "constant", value: 2.5 },
    } as const;
    const loads = [
      { ...load, name: "one", crates: 30, deadOnArrivalShare: 0.01 },
      { ...load, name: "two", crates: 10, deadOnArrivalShare: 0.05 },
    ];
    expect(headFlow(planOf({ kind: "loads", loads }, [station("hanging", 1)])).carcasses).toBeCloseTo(0.98, 12);
  });
});
