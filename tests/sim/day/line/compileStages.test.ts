import { describe, expect, it } from "vitest";
import { chillingCurve } from "../../../../sim/day/line/compileStages.ts";
import {
  CHAIN,
  CHAIN_STATION,
  compileLine,
  DWELL,
  HANGING_POINT,
  LORRY,
  NO_LIMIT,
  OUT,
  STATION,
  steps,
} from "../../../../sim/day/line/index.ts";
import { CHILLING } from "../../../support/chillingConditions.ts";
import { handling, load } from "../../../support/loads.ts";
import { chain, crateStep, dwell, onChain, planOf, saturated, station } from "../../../support/plans.ts";

const list = (column: ArrayLike<number>) => Array.from(column);

describe("compileStages", () => {
  it("puts crate steps before the line and a chain before the stations on it, with their kinds", () => {
    const plan = planOf(
      { kind: "loads", loads: [load("lorry", 0, 1, 1)] },
      [station("hanging", 1), chain("c", 5, 2, [onChain("w", 0, 2, 1)]), dwell("d", 1, 4)],
      { liveHandling: handling([crateStep("unloading", 1), crateStep("feeding", 1)], [crateStep("washer", 1)]) },
    );
    const { stages } = compileLine(plan);
    expect(stages.names).toEqual(["unloading", "feeding", "washer", "hanging", "c", "w", "d"]);
    expect(list(stages.kind)).toEqual([STATION, STATION, STATION, STATION, CHAIN, CHAIN_STATION, DWELL]);
    expect(stages.hanging).toBe(3);
    // Crates go from step to step, to the hanging point, and back to the lorry; heads from stage to stage, out at the end.
    expect(list(stages.next).filter((_, stage) => stage !== 5)).toEqual([1, HANGING_POINT, LORRY, 4, 6, OUT]);
  });

  it("counts places: buffer and positions, shackles, dwell places; no limit is a large number", () => {
    const line = [
      station("a", 1, { buffer: 3, positions: 2 }),
      chain("c", 5, 2, []),
      dwell("d", 1, 4),
      dwell("e", 1, Infinity),
    ];
    expect(list(compileLine(planOf(saturated(1), line)).stages.places)).toEqual([5, 5, 4, NO_LIMIT]);
  });

  it("sends heads to the stage named next, else to the following one that is not off the line", () => {
    const line = [
      station("a", 1, { diversions: [{ to: "trim", share: 0.1 }] }),
      station("trim", 1, { offLine: true, next: "c" }),
      station("b", 1),
      station("c", 1),
      station("other", 1, { offLine: true }),
    ];
    expect(list(compileLine(planOf(saturated(1), line)).stages.next)).toEqual([2, 3, 3, OUT, OUT]);
  });

  it("needs nobody where no crew is named, whatever the people per position", () => {
    const { stages } = compileLine(planOf(saturated(1), [station("a", 1, { peoplePerPosition: 2 })]));
    expect(list(stages.people)).toEqual([0]);
  });

  it("marks a station that takes every weight, and keeps the limits of the others", () => {
    const line = [
      station("a", 1),
      station("b", 1, { weights: { fromKg: 2, toKg: 3, else: "trim" } }),
      station("trim", 1, { offLine: true, next: "b" }),
    ];
    const { stages } = compileLine(planOf(saturated(1), line));
    expect(list(stages.weightElse)).toEqual([-1, 2, -1]);
    expect([stages.weightFrom[1], stages.weightTo[1]]).toEqual([2, 3]);
  });
});

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
