import { MOMENTS, type Plan, type Point } from "../plan/plan.ts";
import type { LimitColumns } from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import type { Step } from "./steps.ts";

export function compileLimits(plan: Plan, all: Step[]): LimitColumns {
  const names = all.map((step) => step.name);
  const operations: number[][] = Array.from({ length: all.length * MOMENTS.length + 2 }, () => []);
  // Far ends go first at a point, so that a limit may run from a point to the same point of the next pass.
  plan.limits.forEach((limit, index) => {
    operations[pointIndex(limit.to, names)]!.push(index * 2 + 1);
  });
  plan.limits.forEach((limit, index) => {
    operations[pointIndex(limit.from, names)]!.push(index * 2);
  });
  return {
    count: plan.limits.length,
    names: plan.limits.map((limit) => limit.name),
    minSeconds: Float64Array.from(plan.limits, (limit) => limit.minSeconds ?? -Infinity),
    maxSeconds: Float64Array.from(plan.limits, (limit) => limit.maxSeconds ?? Infinity),
    operationFrom: rowRanges(operations.map((list) => list.length)),
    operations: Int32Array.from(operations.flat()),
  };
}

function pointIndex(point: Point, stageNames: string[]): number {
  const outside = stageNames.length * MOMENTS.length;
  if (point.stage === null) return point.moment === "entry" ? outside : outside + 1;
  return stageNames.lastIndexOf(point.stage) * MOMENTS.length + MOMENTS.indexOf(point.moment);
}
