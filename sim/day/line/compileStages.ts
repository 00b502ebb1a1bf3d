import type { Pace, Plan } from "../../asked/plan/plan.ts";
import { buildChillingCurve, type ChillingCurve } from "../../maths/chilling/index.ts";
import type { Varying } from "../../maths/random/index.ts";
import { byKind, does } from "../../text/kinds/index.ts";
import { compileBranches } from "./compileBranches.ts";
import {
  HANGING_POINT,
  KIND_NUMBERS,
  LORRY,
  NO_LIMIT,
  OUT,
  type PaceColumns,
  type PositionColumns,
  type StageColumns,
} from "./compiledLine.ts";
import { compileProducts } from "./compileProducts.ts";
import { learningColumns } from "./learningColumns.ts";
import { protectedStages } from "./protectedStages.ts";
import { rowRanges } from "./rowRanges.ts";
import { ownTime, type Step, stageOf, workplace } from "./steps.ts";

const curves = new Map<string, ChillingCurve>();

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

const NO_WORK: Varying = { family: "constant", value: 0 };

export function compileStages(plan: Plan, all: Step[], sections: string[], destinations: string[]): StageColumns {
  const crewNames = plan.crews.map((crew) => crew.name);
  const names = all.map((step) => step.name);
  const crews = all.map((step) => workplace(step).crews.map((name) => crewNames.indexOf(name)));
  const gates = all.map((step) => plan.gates.flatMap((gate, index) => (gate.from === step.name ? [index] : [])));
  if (plan.day.safeStop !== null) gates[names.lastIndexOf(plan.day.safeStop.from)]!.push(plan.gates.length);
  const weights = all.map((step) => ("weights" in step.of ? step.of.weights : null));
  const factors = all.map((step) => ("weightFactor" in step.of ? step.of.weightFactor : null));
  return {
    count: all.length,
    hanging: all.findIndex((step) => !does(step, "handle crates")),
    names,
    kind: Int8Array.from(all, (step) => KIND_NUMBERS[step.kind]),
    next: Int32Array.from(all, (step, index) => nextOf(all, step, index)),
    places: Int32Array.from(all, (step) => limited(placesOf(step))),
    bufferPlaces: Int32Array.from(all, (step) => limited(bufferOf(step))),
    perCycle: Int32Array.from(all, (step) => (does(step, "handle crates") ? step.of.cratesPerCycle : 1)),
    headsPerHook: Int32Array.from(all, (step) => (does(step, "hold heads") ? step.of.headsPerHook : 1)),
    positionFrom: rowRanges(all.map((step) => workplace(step).positions)),
    crewFrom: rowRanges(crews.map((list) => list.length)),
    crew: Int32Array.from(crews.flat()),
    people: Int32Array.from(all, (step) =>
      workplace(step).crews.length === 0 ? 0 : workplace(step).peoplePerPosition,
    ),
    section: Int32Array.from(all, (step) => sections.indexOf(step.section ?? "")),
    work: all.map(workOf),
    chilling: all.map(chillingCurve),
    weightPerKg: Float64Array.from(factors, (factor) => factor?.perKg ?? 0),
    weightAt: Float64Array.from(factors, (factor) => factor?.atKg ?? 0),
    changeoverSeconds: Float64Array.from(all, ({ of }) =>
      "changeoverSeconds" in of ? (of.changeoverSeconds ?? 0) : 0,
    ),
    learning: all.map(({ of }) =>
      "learning" in of && of.learning !== undefined ? learningColumns(of.learning) : null,
    ),
    pace: compilePaces(all),
    weightFrom: Float64Array.from(weights, (range) => range?.fromKg ?? 0),
    weightTo: Float64Array.from(weights, (range) => range?.toKg ?? Infinity),
    weightElse: Int32Array.from(weights, (range) => (range === null ? -1 : names.lastIndexOf(range.else))),
    travel: all.map((step) => stageOf(step)?.travelSeconds ?? null),
    ...compileBranches(all, names, destinations),
    ...compileProducts(plan, all),
    gateFrom: rowRanges(gates.map((list) => list.length)),
    gate: Int32Array.from(gates.flat()),
    chain: Int32Array.from(chainsOf(all)),
    protected: Int8Array.from(protectedStages(plan, all), (inside) => (inside ? 1 : 0)),
  };
}

export function compilePositions(all: Step[], stages: StageColumns): PositionColumns {
  const stage = all.flatMap((step, index) => new Array<number>(workplace(step).positions).fill(index));
  const ownBreakdowns = stage.map((index) => workplace(all[index]!).breakdowns.filter(isOwn).length);
  return {
    count: stages.positionFrom[stages.count]!,
    stage: Int32Array.from(stage),
    ownBreakdownFrom: rowRanges(ownBreakdowns),
  };
}

/** Breakdowns on working time that stop one position alone need no slot of their own: the position's slot serves. */
export function isOwn(breakdown: { clock: string; scope: string }): boolean {
  return breakdown.clock === "running" && breakdown.scope === "position";
}

/** The named stage, else the next one of the same kind of way that is not off the line. */
function nextOf(all: Step[], step: Step, index: number): number {
  if (does(step, "handle crates")) {
    const following = all[index + 1];
    if (following !== undefined && does(following, "handle crates") && following.isBack === step.isBack)
      return index + 1;
    return step.isBack ? LORRY : HANGING_POINT;
  }
  const named = stageOf(step)?.next ?? null;
  if (named !== null) return all.findIndex((other) => other.name === named && !does(other, "handle crates"));
  const following = all.findIndex((other, at) => at > index && stageOf(other)?.offLine === false);
  return following < 0 ? OUT : following;
}

function placesOf(step: Step): number {
  return byKind(step, {
    crates: ({ of }) => of.places + of.positions * of.cratesPerCycle,
    station: ({ of }) => of.buffer + of.positions,
    dwell: ({ of }) => of.places,
    chain: ({ of }) => of.places,
    "chain station": ({ of }) => of.window + of.positions,
  });
}

/** Heads wait for a station on a chain in its window, which the chain counts; crates in front of their step. */
function bufferOf(step: Step): number {
  return byKind(step, {
    crates: ({ of }) => of.places,
    station: ({ of }) => of.buffer,
    dwell: () => 0,
    chain: () => 0,
    "chain station": ({ of }) => of.window,
  });
}

function limited(places: number): number {
  return Math.min(places, NO_LIMIT);
}

function workOf(step: Step): Varying {
  return ownTime(step) ?? NO_WORK;
}

function chainsOf(all: Step[]): number[] {
  let chains = -1;
  return all.map((step) => {
    if (does(step, "carry stations")) chains++;
    return does(step, "carry stations") || does(step, "stand on a chain") ? chains : -1;
  });
}

/** The chilling curve of a computed dwell, null elsewhere; kept by its figures, since a study compiles many like lines. */
export function chillingCurve(step: Step): ChillingCurve | null {
  if (!does(step, "hold heads") || step.of.dwell.kind !== "chilling") return null;
  const key = JSON.stringify(step.of.dwell.chilling);
  const known = curves.get(key);
  if (known !== undefined) return known;
  const curve = buildChillingCurve(step.of.dwell.chilling);
  curves.set(key, curve);
  return curve;
}

/** Speed by the hour of stations, on chains or not, and of chains; null for stages that always work as written. */
function compilePaces(all: Step[]): (PaceColumns | null)[] {
  return all.map((step) => {
    const pace = "pace" in step.of ? step.of.pace : [];
    return pace.length === 0 ? null : columns(pace, workplace(step).positions);
  });
}

function columns(paces: readonly Pace[], positions: number): PaceColumns {
  return {
    fromSeconds: Float64Array.from(paces, ({ fromSeconds }) => fromSeconds),
    speed: Float64Array.from(paces, ({ speed }) => speed),
    leastSeconds: Float64Array.from(paces, ({ mostPerSecond }) =>
      mostPerSecond === null ? 0 : positions / mostPerSecond,
    ),
  };
}
