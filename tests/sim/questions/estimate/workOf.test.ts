import { describe, expect, it } from "vitest";
import { meanCycleSeconds, workOf } from "../../../../sim/questions/estimate/workOf.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { station } from "../../../support/plans.ts";

describe("workOf", () => {
  it("spreads the cycle over positions and visits", () => {
    const found = workOf(station("a", { family: "lognormal", mean: 12, cv: 0.3 }, { positions: 3 }), 0.5, 2.5);
    expect(found.seconds).toBeCloseTo(2, 12);
    expect(found.squaredCv).toBeCloseTo(0.09, 12);
  });

  it("takes a stop of one of several positions for a shorter one of all, as long in position-seconds", () => {
    const seconds = (positions: number, scope: "position" | "station") => {
      const [stop] = workOf(station("a", 6, { positions, breakdowns: [breakdown(600, 60, { scope })] }), 1, 2.5).stops;
      return stop!.chance * stop!.seconds;
    };
    expect(seconds(1, "position")).toBeCloseTo(0.6, 12);
    expect(seconds(2, "position")).toBeCloseTo(0.3, 12);
    expect(seconds(2, "station")).toBeCloseTo(0.3, 12);
  });

  it("stretches the cycle with the weight, never below a tenth", () => {
    const weighed = station("a", 10, { weightFactor: { perKg: 0.4, atKg: 2 } });
    expect(meanCycleSeconds(weighed, 2.5)).toBeCloseTo(12, 12);
    expect(meanCycleSeconds({ ...weighed, weightFactor: { perKg: 2, atKg: 2 } }, 1)).toBeCloseTo(1, 12);
  });
});
