import { describe, expect, it } from "vitest";
import { chillingCurve } from "../../../../sim/day/line/chillingCurve.ts";
import { steps } from "../../../../sim/day/line/index.ts";
import { CHILLING } from "../../../support/chillingConditions.ts";
import { dwell, planOf, saturated, station } from "../../../support/plans.ts";

describe("chillingCurve", () => {
  it("is there for a computed dwell only, and the same object for the same figures", () => {
    const chiller = (name: string, airCelsius: number) => ({
      ...dwell(name, 1, 9),
      dwell: { kind: "chilling" as const, chilling: { ...CHILLING, airCelsius } },
    });
    const line = [station("a", 1), dwell("bleed", 1, 9), chiller("c", 2), chiller("d", 2), chiller("e", 3)];
    const curves = steps(planOf(saturated(1), line)).map(chillingCurve);
    expect(curves.slice(0, 2)).toEqual([null, null]);
    expect(curves[3]).toBe(curves[2]);
    expect(curves[4]).not.toBe(curves[2]);
    expect(curves[4]!.seconds[0]!).toBeGreaterThan(curves[2]!.seconds[0]!);
  });
});
