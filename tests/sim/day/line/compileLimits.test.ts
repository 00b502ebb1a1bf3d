import { describe, expect, it } from "vitest";
import type { Point, TimeLimit } from "../../../../sim/asked/plan/plan.ts";
import { compileLine, NO_LIMIT } from "../../../../sim/day/line/index.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";
import { withDay } from "../../../support/withDay.ts";

const limit = (name: string, from: Point, to: Point, changes: Partial<TimeLimit> = {}): TimeLimit => ({
  name,
  from,
  to,
  minSeconds: null,
  maxSeconds: 10,
  source: "",
  ...changes,
});

const line = [station("a", 1), station("b", 1)];
const A_START: Point = { stage: "a", moment: "start" };
const B_END: Point = { stage: "b", moment: "end" };

describe("compileLimits", () => {
  it("takes no bound for an infinite one", () => {
    const limits = [limit("most", A_START, B_END), limit("least", A_START, B_END, { minSeconds: 3, maxSeconds: null })];
    const compiled = compileLine(planOf(saturated(1), line, { limits })).limits;
    expect(Array.from(compiled.minSeconds)).toEqual([-Infinity, 3]);
    expect(Array.from(compiled.maxSeconds)).toEqual([10, Infinity]);
  });
});

describe("compilePoints", () => {
  it("notes near ends and far ends by point, far ends first, and the points outside the line last", () => {
    const limits = [
      limit("on", A_START, B_END),
      limit("after", B_END, { stage: null, moment: "exit" }),
      limit("before", { stage: null, moment: "entry" }, A_START),
    ];
    const { limitFrom, limit: rows } = compileLine(planOf(saturated(1), line, { limits })).points;
    const at = (point: number) => Array.from(rows.slice(limitFrom[point], limitFrom[point + 1]));
    // Limit x 2, plus 1 at its far end; points: stage x 4 + moment.
    expect(at(1)).toEqual([2 * 2 + 1, 0]);
    expect(at(6)).toEqual([1, 2]);
    expect(at(8)).toEqual([4]);
    expect(at(9)).toEqual([3]);
  });
});

describe("compileGates", () => {
  it("puts the protected stretch after the plan's gates, without a limit, to the end of its last stage", () => {
    const gates = [{ name: "gate", from: "a", to: { stage: "b", moment: "start" as const }, atMost: 2 }];
    const plan = withDay(planOf(saturated(1), line, { gates }), { safeStop: { from: "a", to: "b" } });
    const compiled = compileLine(plan);
    expect(Array.from(compiled.gates.atMost)).toEqual([2, NO_LIMIT]);
    expect(compiled.gates.safeStop).toBe(1);
    expect(Array.from(compiled.stages.gate)).toEqual([0, 1]);
    const { gateFrom, gate } = compiled.points;
    expect(Array.from(gate.slice(gateFrom[5], gateFrom[6]))).toEqual([0]);
    expect(Array.from(gate.slice(gateFrom[6], gateFrom[7]))).toEqual([1]);
  });

  it("has no protected stretch when the plan names none", () => {
    expect(compileLine(planOf(saturated(1), line)).gates.safeStop).toBe(-1);
  });
});
