import { MOMENTS, type Plan, type Point } from "../../asked/plan/plan.ts";
import { spansOf } from "./compileBranches.ts";
import { type GateColumns, type LimitColumns, NO_LIMIT, type PointColumns } from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import type { Step } from "./steps.ts";

export function compileLimits(plan: Plan): LimitColumns {
  return {
    count: plan.limits.length,
    names: plan.limits.map((limit) => limit.name),
    minSeconds: Float64Array.from(plan.limits, (limit) => limit.minSeconds ?? -Infinity),
    maxSeconds: Float64Array.from(plan.limits, (limit) => limit.maxSeconds ?? Infinity),
  };
}

/** The plan's gates, then the stretch of the safe stop. */
export function compileGates(plan: Plan, all: Step[]): GateColumns {
  const names = all.map((step) => step.name);
  const { safeStop } = plan.day;
  const stretch = safeStop === null ? [] : [{ name: "safe stop", from: safeStop.from, atMost: NO_LIMIT }];
  const rows = [...plan.gates, ...stretch];
  return {
    count: rows.length,
    names: rows.map((gate) => gate.name),
    from: Int32Array.from(rows, (gate) => names.lastIndexOf(gate.from)),
    atMost: Int32Array.from(rows, (gate) => gate.atMost),
    safeStop: safeStop === null ? -1 : plan.gates.length,
  };
}

export function compilePoints(plan: Plan, all: Step[]): PointColumns {
  const names = all.map((step) => step.name);
  const points = all.length * MOMENTS.length + 2;
  const limits: number[][] = Array.from({ length: points }, () => []);
  const gates: number[][] = Array.from({ length: points }, () => []);
  // Far ends go first at a point, so that a limit may run from a point to the same point of the next pass.
  const spans = spansOf(plan);
  const watched = [...plan.limits, ...spans];
  watched.forEach(({ to }, index) => {
    limits[pointIndex(to, names)]!.push(index * 2 + 1);
  });
  watched.forEach(({ from }, index) => {
    limits[pointIndex(from, names)]!.push(index * 2);
  });
  plan.gates.forEach((gate, index) => {
    gates[pointIndex(gate.to, names)]!.push(index);
  });
  const { safeStop } = plan.day;
  if (safeStop !== null) gates[pointIndex({ stage: safeStop.to, moment: "end" }, names)]!.push(plan.gates.length);
  return {
    watched: Uint8Array.from(limits, (list, point) => (list.length + gates[point]!.length > 0 ? 1 : 0)),
    limitFrom: rowRanges(limits.map((list) => list.length)),
    limit: Int32Array.from(limits.flat()),
    spans: spans.length,
    gateFrom: rowRanges(gates.map((list) => list.length)),
    gate: Int32Array.from(gates.flat()),
  };
}

function pointIndex(point: Point, stageNames: string[]): number {
  const outside = stageNames.length * MOMENTS.length;
  if (point.stage === null) return point.moment === "entry" ? outside : outside + 1;
  return stageNames.lastIndexOf(point.stage) * MOMENTS.length + MOMENTS.indexOf(point.moment);
}
