import type { Plan } from "../../asked/plan/index.ts";
import { workplace } from "../../day/line/index.ts";
import { does } from "../../text/kinds/index.ts";
import { type Ceiling, ceilings } from "../estimate/index.ts";
import type { PlanChange } from "./change.ts";
import {
  breakdownChanges,
  dwellChanges,
  onePersonMore,
  onePositionMore,
  placeChanges,
  quickerMachine,
  sharedBreakdownChanges,
} from "./changesOf.ts";
import { guardedSteps, noWaitingBefore } from "./guardedSteps.ts";
import { staggerChanges } from "./stopChanges.ts";
import { hasWorkForMore, type WorkStep, workSteps } from "./workplaces.ts";

/** A load within this share of the highest is near it: what the estimate leaves out (waits, jams, breaks) can make up for it. */
const NEAR = 0.7;
/** Changes of which pairs are tried. */
const MAX_IN_PAIRS = 8;

export interface ChangesToTry {
  /** Single changes. */
  singles: PlanChange[];
  /** Two at once, of what lies nearest to the highest load; for where single changes show nothing. */
  pairs: PlanChange[];
  /** Machines whose quicker work is not tried, though their load is near the highest: their time is there for animals or for hygiene. */
  guarded: string[];
  /** Crews near the highest load of which every position has its people: one more person has nowhere to work. */
  fullCrews: string[];
  /** Of a week: changes that looked worse on the day alone, and are not tried in weeks. */
  dropped?: number;
}

/**
 * What is tried on a plan: at every station with breakdowns the breakdowns and one more machine; every shared breakdown; one more position, and
 * quicker work of a machine, where the load is near the highest (by the ceilings of the analytic estimate); one more
 * person in every crew that has work for one; more and fewer places everywhere; other staggers of the breaks, by
 * themselves and with a longer trough before the stage that pauses.
 */
export function changesToTry(plan: Plan): ChangesToTry {
  const found = ceilings(plan);
  const work = workSteps(plan);
  const guarded = guardedSteps(plan);
  const near = new Set(work.filter((step) => isNear(step, found)).map(({ name }) => name));
  const machines = work.filter((step) => near.has(step.name) && workplace(step).crews.length === 0);
  const crews = plan.crews.map(({ name }) => name).filter((crew) => workplaceOrRepairs(plan, crew));
  const staggers = staggerChanges(plan);
  const dwells = plan.line.filter((stage) => does(stage, "hold heads")).filter(({ places }) => Number.isFinite(places));
  const troughs = dwells.flatMap((dwell) =>
    dwellChanges(dwell)
      .filter(({ kind }) => kind === "more places")
      .slice(-1),
  );
  const noWaiting = noWaitingBefore(plan);
  const positions = work.filter((step) => near.has(step.name) || isFailing(step)).filter(hasRoom);
  const singles = [
    ...positions.filter((step) => !lacksPeople(plan, step)).map((step) => onePositionMore(plan, step)),
    ...machines.filter(({ name }) => !guarded.has(name)).map(quickerMachine),
    ...work.filter(isFailing).flatMap(breakdownChanges),
    ...plan.sharedBreakdowns.flatMap(({ name }) => sharedBreakdownChanges(name)),
    ...crews.filter((crew) => hasWorkForMore(plan, crew)).map(onePersonMore),
    ...work.flatMap((step) =>
      ofPlaces(plan, step).filter(({ kind }) => kind === "fewer places" || !noWaiting.has(step.name)),
    ),
    ...dwells.flatMap(dwellChanges),
    ...staggers,
    ...staggers.slice(0, 2).flatMap((one) => troughs.slice(0, 1).map((trough) => pairOf(one, trough))),
  ];
  return {
    singles,
    pairs: pairs(singles, plan, found),
    guarded: machines.filter(({ name }) => guarded.has(name)).map(({ name }) => name),
    fullCrews: crews.filter((crew) => !hasWorkForMore(plan, crew) && worksAt(plan, crew, near)),
  };
}

function isFailing(step: WorkStep): boolean {
  return workplace(step).breakdowns.length > 0;
}

/** Where a crew works at this step alone and has too few people for it, one more person needs no position. */
function lacksPeople(plan: Plan, step: WorkStep): boolean {
  const crew = workplace(step).crews[0];
  if (crew === undefined || !hasWorkForMore(plan, crew)) return false;
  return !workSteps(plan).some((other) => other.name !== step.name && workplace(other).crews.includes(crew));
}

/** A window on a chain takes no more positions than it has places. */
function hasRoom(step: WorkStep): boolean {
  return !does(step, "stand on a chain") || step.of.positions < step.of.window;
}

function workplaceOrRepairs(plan: Plan, crew: string): boolean {
  const all = workSteps(plan).map((step) => workplace(step));
  const atPlace = all.some(
    ({ crews, breakdowns }) => crews.includes(crew) || breakdowns.some((breakdown) => breakdown.crew === crew),
  );
  return atPlace || plan.sharedBreakdowns.some((breakdown) => breakdown.crew === crew);
}

function worksAt(plan: Plan, crew: string, places: ReadonlySet<string>): boolean {
  return workSteps(plan).some((step) => places.has(step.name) && workplace(step).crews.includes(crew));
}

function ofPlaces(plan: Plan, step: WorkStep): PlanChange[] {
  if (!does(step, "buffer heads") || step.name === plan.line[0]?.name || !Number.isFinite(step.of.buffer)) return [];
  return placeChanges(step);
}

function isNear(step: WorkStep, found: readonly Ceiling[]): boolean {
  const lowest = Math.min(...found.map(({ headsPerSecond }) => headsPerSecond));
  return lowest >= NEAR * ceilingOf([step.name, ...workplace(step).crews], found);
}

/** The lowest of the ceilings that speak of one of these names. Those of crews name all that share work. */
function ceilingOf(names: readonly string[], found: readonly Ceiling[]): number {
  const own = found.filter(({ what, kind }) =>
    kind === "people" ? what.split(", ").some((name) => names.includes(name)) : names.includes(what),
  );
  return Math.min(Infinity, ...own.map(({ headsPerSecond }) => headsPerSecond));
}

/** Two of the changes that let more through, of those places and crews whose ceilings are lowest. */
function pairs(singles: readonly PlanChange[], plan: Plan, found: readonly Ceiling[]): PlanChange[] {
  const letMoreThrough = new Set(["position", "person", "quicker machine", "more places"]);
  const crewsAt = new Map(workSteps(plan).map((step) => [step.name, workplace(step).crews]));
  const ranked = singles
    .filter(({ kind }) => letMoreThrough.has(kind))
    .filter(({ kind, of }) => kind !== "more places" || isDwell(plan, of))
    .map((change) => ({ change, ceiling: ceilingOf([change.of, ...(crewsAt.get(change.of) ?? [])], found) }))
    .sort((a, b) => a.ceiling - b.ceiling)
    .slice(0, MAX_IN_PAIRS)
    .map(({ change }) => change);
  return ranked.flatMap((one, index) =>
    ranked
      .slice(index + 1)
      .filter((other) => other.of !== one.of || other.kind !== one.kind)
      .filter((other) => other.of !== one.of || ![one.kind, other.kind].includes("quicker machine"))
      .map((other) => pairOf(one, other)),
  );
}

function isDwell(plan: Plan, name: string): boolean {
  return plan.line.some((stage) => does(stage, "hold heads") && stage.name === name);
}

/** Both changes, the second made to a plan that has the first. */
function pairOf(one: PlanChange, other: PlanChange): PlanChange {
  const label = `${one.label} and ${other.label}`;
  return {
    ...{ kind: "pair", of: one.of === other.of ? one.of : `${one.of} and ${other.of}`, plural: true },
    ...{ label, phrase: label },
    on: (plan) => {
      const first = one.on(plan);
      const second = other.on(first.plan);
      return { plan: second.plan, set: { ...first.set, ...second.set } };
    },
  };
}
