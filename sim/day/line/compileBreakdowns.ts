import type { Breakdown, Plan, Replacement, SharedBreakdown } from "../../asked/plan/plan.ts";
import type { BreakdownColumns, StageColumns } from "./compiledLine.ts";
import { isOwn } from "./compileStages.ts";
import { rowRanges } from "./rowRanges.ts";
import { type Step, workplace } from "./steps.ts";

interface Unit {
  breakdown: Breakdown;
  stage: number;
  positionFrom: number;
  positionTo: number;
}

/**
 * Breakdown units, things that break by themselves: first those of single positions on working time, in position order, then those with slots of their own,
 * those that stop several stages at once last.
 */
export function compileBreakdowns(plan: Plan, all: Step[], stages: StageColumns): BreakdownColumns {
  const crews = plan.crews.map((crew) => crew.name);
  const headTo = ({ breakdown }: Unit) =>
    breakdown.headInHand === "resume" ? -1 : stages.names.lastIndexOf(breakdown.headInHand.to);
  const units = all.flatMap((step, stage) => unitsOf(step, stage, stages.positionFrom));
  const own = units.filter((unit) => isOwn(unit.breakdown)).sort((a, b) => a.positionFrom - b.positionFrom);
  const others = units.filter((unit) => !isOwn(unit.breakdown));
  const rows = [...own, ...others];
  const shared = plan.sharedBreakdowns;
  const stopped = shared.map((breakdown) => stoppedStages(breakdown, stages));
  const breakdowns = [...rows.map((unit) => unit.breakdown), ...shared];
  const clocks = all.map((_, stage) => [
    ...rows.flatMap((unit, row) => (isStationClock(unit, stage) ? [row] : [])),
    ...shared.flatMap(({ clock }, row) =>
      clock !== "calendar" && stopped[row]!.includes(stage) ? [rows.length + row] : [],
    ),
  ]);
  const withShared = (of: (unit: Unit) => number) =>
    Int32Array.from(breakdowns, (_, row) => (row < rows.length ? of(rows[row]!) : -1));
  return {
    count: breakdowns.length,
    ownCount: own.length,
    names: breakdowns.map(({ name }) => name),
    stage: withShared((unit) => unit.stage),
    positionFrom: withShared((unit) => unit.positionFrom),
    positionTo: withShared((unit) => unit.positionTo),
    onRunningTime: Int8Array.from(breakdowns, ({ clock }) => (clock === "calendar" ? 0 : 1)),
    uptime: breakdowns.map(({ uptimeSeconds }) => uptimeSeconds),
    repair: breakdowns.map(({ repairSeconds }) => repairSeconds),
    replacedAfter: Float64Array.from(breakdowns, (each) => replacementOf(each)?.afterSeconds ?? Infinity),
    replacementSeconds: Float64Array.from(breakdowns, (each) => replacementOf(each)?.takesSeconds ?? 0),
    crew: Int32Array.from(breakdowns, ({ crew }) => crews.indexOf(crew ?? "")),
    headTo: withShared(headTo),
    slot: new Int32Array(breakdowns.length).fill(-1),
    sharedFrom: rows.length,
    stoppedFrom: rowRanges(stopped.map((list) => list.length)),
    stopped: Int32Array.from(stopped.flat()),
    runningLeast: Int32Array.from(breakdowns, ({ clock }, row) =>
      clock === "all running" ? stopped[row - rows.length]!.length : 1,
    ),
    stationClockFrom: rowRanges(clocks.map((list) => list.length)),
    stationClock: Int32Array.from(clocks.flat()),
  };
}

function stoppedStages({ stops }: SharedBreakdown, { names }: StageColumns): number[] {
  return stops.map((name) => names.lastIndexOf(name)).sort((a, b) => a - b);
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

/** What several stages share is not replaced by its age. */
function replacementOf(breakdown: Breakdown | SharedBreakdown): Replacement | undefined {
  return "replaced" in breakdown ? breakdown.replaced : undefined;
}
