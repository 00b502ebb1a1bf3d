import type { Breakdown, Plan } from "../plan/plan.ts";
import type { FailureColumns, StageColumns } from "./compiledLine.ts";
import { isOwn } from "./compileStages.ts";
import { rowRanges } from "./rowRanges.ts";
import { type Step, workplace } from "./steps.ts";

interface Unit {
  breakdown: Breakdown;
  stage: number;
  positionFrom: number;
  positionTo: number;
}

/** Failure units: first those of single positions on working time, in position order, then those with slots of their own. */
export function compileFailures(plan: Plan, all: Step[], stages: StageColumns): FailureColumns {
  const crews = plan.crews.map((crew) => crew.name);
  const headTo = ({ breakdown }: Unit) =>
    breakdown.headInHand === "resume" ? -1 : stages.names.lastIndexOf(breakdown.headInHand.to);
  const units = all.flatMap((step, stage) => unitsOf(step, stage, stages.positionFrom));
  const own = units.filter((unit) => isOwn(unit.breakdown)).sort((a, b) => a.positionFrom - b.positionFrom);
  const others = units.filter((unit) => !isOwn(unit.breakdown));
  const rows = [...own, ...others];
  const clocks = all.map((_, stage) => rows.flatMap((unit, row) => (isStationClock(unit, stage) ? [row] : [])));
  return {
    count: rows.length,
    ownCount: own.length,
    names: rows.map((unit) => unit.breakdown.name),
    stage: Int32Array.from(rows, (unit) => unit.stage),
    positionFrom: Int32Array.from(rows, (unit) => unit.positionFrom),
    positionTo: Int32Array.from(rows, (unit) => unit.positionTo),
    onRunningTime: Int8Array.from(rows, (unit) => (unit.breakdown.clock === "running" ? 1 : 0)),
    uptime: rows.map((unit) => unit.breakdown.uptimeSeconds),
    repair: rows.map((unit) => unit.breakdown.repairSeconds),
    crew: Int32Array.from(rows, (unit) => crews.indexOf(unit.breakdown.crew ?? "")),
    headTo: Int32Array.from(rows, headTo),
    slot: new Int32Array(rows.length).fill(-1),
    stationClockFrom: rowRanges(clocks.map((list) => list.length)),
    stationClock: Int32Array.from(clocks.flat()),
  };
}

function isStationClock(unit: Unit, stage: number): boolean {
  return unit.stage === stage && unit.breakdown.clock === "running" && !isOwn(unit.breakdown);
}

/** One unit per position, or one for the whole station. */
function unitsOf(step: Step, stage: number, positionFrom: Int32Array): Unit[] {
  const from = positionFrom[stage]!;
  const to = positionFrom[stage + 1]!;
  return workplace(step).breakdowns.flatMap((breakdown) => {
    if (breakdown.scope === "station") return [{ breakdown, stage, positionFrom: from, positionTo: to }];
    return Array.from({ length: to - from }, (_, index) => ({
      breakdown,
      stage,
      positionFrom: from + index,
      positionTo: from + index + 1,
    }));
  });
}
