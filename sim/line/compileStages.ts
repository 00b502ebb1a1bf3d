import type { Plan, Removal } from "../plan/plan.ts";
import type { Varying } from "../random/index.ts";
import {
  DWELL,
  HANGING_POINT,
  NO_LIMIT,
  OUT,
  type PositionColumns,
  STATION,
  type StageColumns,
} from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import { type Step, UNLOADING, workplace } from "./steps.ts";

export const CARCASS = "carcass";
export const DEAD_ON_ARRIVAL = "dead on arrival";

/** Sections in the order in which the line first meets them. */
export function sectionsOf(plan: Plan): string[] {
  return [...new Set(plan.line.map((stage) => stage.section))];
}

/** Where heads can go: carcass first, dead on arrival second when heads come in loads, then the plan's removals. */
export function destinationsOf(plan: Plan): string[] {
  const removals = plan.line.flatMap((stage) => stage.removals.map((removal) => removal.as));
  const first = plan.supply.kind === "loads" ? [CARCASS, DEAD_ON_ARRIVAL] : [CARCASS];
  return [...new Set([...first, ...removals])];
}

export function compileStages(plan: Plan, all: Step[], sections: string[], destinations: string[]): StageColumns {
  const crewNames = plan.crews.map((crew) => crew.name);
  const removals = all.map((step) => step.stage?.removals ?? []);
  return {
    count: all.length,
    hanging: all.findIndex((step) => step.stage !== null),
    names: all.map((step) => step.name),
    kind: Int8Array.from(all, (step) => (step.stage?.kind === "dwell" ? DWELL : STATION)),
    next: Int32Array.from(all, (step, index) => nextOf(all, step, index)),
    places: Int32Array.from(all, (step) => limited(placesOf(plan, step))),
    bufferPlaces: Int32Array.from(all, (step) => limited(bufferOf(plan, step))),
    positionFrom: rowRanges(all.map((step) => workplace(step).positions)),
    crew: Int32Array.from(all, (step) => crewNames.indexOf(workplace(step).crew ?? "")),
    people: Int32Array.from(all, (step) => workplace(step).peoplePerPosition),
    section: Int32Array.from(all, (step) => sections.indexOf(step.stage?.section ?? "")),
    work: all.map(workOf),
    travel: all.map((step) => step.stage?.travelSeconds ?? null),
    removalFrom: rowRanges(removals.map((list) => list.length)),
    removalShare: Float64Array.from(removals.flatMap(cumulativeShares)),
    removalTo: Int32Array.from(removals.flat(), (removal) => destinations.indexOf(removal.as)),
  };
}

export function compilePositions(all: Step[], stages: StageColumns): PositionColumns {
  const stage = all.flatMap((step, index) => new Array<number>(workplace(step).positions).fill(index));
  const ownFailures = stage.map((index) => workplace(all[index]!).breakdowns.filter(isOwn).length);
  return {
    count: stages.positionFrom[stages.count]!,
    stage: Int32Array.from(stage),
    ownFailureFrom: rowRanges(ownFailures),
  };
}

/** Failures on working time that stop one position alone need no slot of their own: the position's slot serves. */
export function isOwn(breakdown: { clock: string; scope: string }): boolean {
  return breakdown.clock === "running" && breakdown.scope === "position";
}

function nextOf(all: Step[], step: Step, index: number): number {
  if (step.crates !== null && all[index + 1]?.stage !== null) return HANGING_POINT;
  return index + 1 < all.length ? index + 1 : OUT;
}

function placesOf(plan: Plan, step: Step): number {
  if (step.stage?.kind === "dwell") return step.stage.places;
  return bufferOf(plan, step) + workplace(step).positions;
}

/** Crates wait for unloading on their lorries, without limit; they wait for feeding in the lairage. */
function bufferOf(plan: Plan, step: Step): number {
  if (step.stage?.kind === "station") return step.stage.buffer;
  if (step.stage?.kind === "dwell") return 0;
  return step.name === UNLOADING ? Infinity : plan.liveHandling!.lairageCrates;
}

function limited(places: number): number {
  return Math.min(places, NO_LIMIT);
}

function workOf(step: Step): Varying {
  if (step.crates !== null) return step.crates.secondsPerCrate;
  return step.stage.kind === "station" ? step.stage.cycleSeconds : step.stage.dwellSeconds;
}

function cumulativeShares(removals: Removal[]): number[] {
  let sum = 0;
  return removals.map((removal) => {
    sum += removal.share;
    return sum;
  });
}
