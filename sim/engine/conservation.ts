import { CHAIN, CHAIN_STATION, DWELL } from "../line/index.ts";
import type { DayState } from "./dayState.ts";
import { inWorkAt, itemsAt, listed, ridingOn } from "./present.ts";

/** Heads, crates, people or kilograms were lost or doubled: a fault of the engine, never of a plan. */
export class ConservationError extends Error {
  override name = "ConservationError";
}

/** Counts every head and crate where it stands and compares with the running figures. Cost: all that is present. */
export function checkConservation(day: DayState): void {
  const { stages, supply } = day.line;
  const heads: number[] = [];
  const crates = listed(day, day.atHanging.first[0]!, day.atHanging.length[0]!);
  for (let stage = 0; stage < stages.count; stage++) {
    (stage >= stages.hanging ? heads : crates).push(...itemsAt(day, stage));
    checkPlaces(day, stage);
  }
  const inCrates = crates.reduce((sum, crate) => sum + day.pool.number[crate]!, 0);
  const out = day.out.reduce((sum, count) => sum + count, 0);
  expectEqual(day, "heads on the line", heads.length, day.headsOnLine);
  expectEqual(day, "heads and crates present", heads.length + crates.length, day.pool.live);
  expectEqual(day, "heads and crates, each once", new Set([...heads, ...crates]).size, day.pool.live);
  if (supply.kind === "loads") expectEqual(day, "heads hung and not hung", day.arrived, inCrates + day.hung);
  checkMass(day, heads);
  checkCrews(day);
  if (day.watchedFrom > 0) return;
  expectEqual(day, "heads arrived", day.arrived, inCrates + day.turnedAway + heads.length + out);
  const inSections = day.sectionHeads.reduce((sum, count) => sum + count, 0);
  expectEqual(day, "heads by section", heads.length, inSections);
}

/** Live weight = by-products + out + on the line, to rounding. */
function checkMass(day: DayState, heads: number[]): void {
  const sum = (column: Float64Array) => column.reduce((total, kilograms) => total + kilograms, 0);
  const onLine = heads.reduce((total, item) => total + day.pool.mass[item]!, 0);
  const found = sum(day.productKg) + sum(day.outKg) + onLine;
  if (Math.abs(found - day.liveKg) > 1e-9 * Math.max(1, day.liveKg))
    fail(day, `mass: ${found} against ${day.liveKg} kg`);
}

function checkCrews(day: DayState): void {
  day.busyPeople.forEach((busy, crew) => {
    const { names, peopleMax } = day.line.crews;
    if (busy < 0 || busy > peopleMax[crew]!) fail(day, `${names[crew]} has ${busy} people at work`);
  });
}

function checkPlaces(day: DayState, stage: number): void {
  const { stages, supply } = day.line;
  if (stages.kind[stage] === CHAIN_STATION) return;
  const here = stages.kind[stage] === CHAIN ? ridingOn(day, stages.chain[stage]!) : presentAt(day, stage);
  const expected = here.length + inwardBound(day, stage);
  expectEqual(day, `places taken at ${stages.names[stage]}`, day.occupancy[stage]!, expected);
  const unlimited = stage === stages.hanging && supply.kind === "stream" && !supply.turnAway;
  if (!unlimited && day.occupancy[stage]! > stages.places[stage]!) fail(day, `${stages.names[stage]} holds too many`);
}

function presentAt(day: DayState, stage: number): number[] {
  const queue = listed(day, day.queue.first[stage]!, day.queue.length[stage]!);
  return day.line.stages.kind[stage] === DWELL ? queue : [...queue, ...inWorkAt(day, stage)];
}

/** Items on their way to the stage, from whatever stage. */
function inwardBound(day: DayState, stage: number): number {
  let bound = 0;
  for (let from = 0; from < day.line.stages.count; from++) {
    const items = listed(day, day.travelling.first[from]!, day.travelling.length[from]!);
    bound += items.filter((item) => day.pool.sendTo[item] === stage).length;
  }
  return bound;
}

function expectEqual(day: DayState, what: string, left: number, right: number): void {
  if (left !== right) fail(day, `${what}: ${left} against ${right}`);
}

function fail(day: DayState, what: string): never {
  throw new ConservationError(`at ${day.now} s (event ${day.events}): ${what}`);
}
