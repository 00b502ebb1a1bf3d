import { CHAIN, CHAIN_STATION, DWELL } from "../line/index.ts";
import { headAt } from "./chainRing.ts";
import { type DayState, NONE } from "./dayState.ts";

/** Heads, crates, people or kilograms were lost or doubled: a fault of the engine, never of a plan. */
export class ConservationError extends Error {
  override name = "ConservationError";
}

/** One count of everything that is present. `seen[item]` is the number of the count that met the item last. */
interface Count {
  day: DayState;
  seen: Int32Array;
  number: number;
  heads: number;
  crates: number;
  headsInCrates: number;
  kilograms: number;
  /** By stage: items on their way to it. */
  bound: Int32Array;
}

const counts = new WeakMap<DayState, Count>();

/** Counts every head and crate where it stands and compares with the running figures. Cost: all that is present. */
export function checkConservation(day: DayState): void {
  const { stages, supply } = day.line;
  const count = freshCount(day);
  for (let stage = 0; stage < stages.count; stage++) visitTravelling(count, stage);
  for (let stage = 0; stage < stages.count; stage++) checkStage(count, stage);
  visitList(count, day.atHanging.first[0]!, day.atHanging.length[0]!, false);
  expectEqual(day, "heads on the line", count.heads, day.headsOnLine);
  expectEqual(day, "heads and crates present", count.heads + count.crates, day.pool.live);
  if (supply.kind === "loads") expectEqual(day, "heads hung and not hung", day.arrived, count.headsInCrates + day.hung);
  checkMass(day, count.kilograms);
  checkCrews(day);
  if (day.watchedFrom > 0) return;
  expectEqual(day, "heads arrived", day.arrived, count.headsInCrates + day.turnedAway + count.heads + sum(day.out));
  expectEqual(day, "heads by section", count.heads, sum(day.sectionHeads));
}

function freshCount(day: DayState): Count {
  let count = counts.get(day);
  if (count === undefined || count.seen.length < day.pool.next.length) {
    const bound = new Int32Array(day.line.stages.count);
    const seen = new Int32Array(day.pool.next.length);
    count = { day, seen, number: 0, heads: 0, crates: 0, headsInCrates: 0, kilograms: 0, bound };
    counts.set(day, count);
  }
  count.number++;
  count.heads = 0;
  count.crates = 0;
  count.headsInCrates = 0;
  count.kilograms = 0;
  count.bound.fill(0);
  return count;
}

function visit(count: Count, item: number, isHead: boolean): void {
  const { day, seen, number } = count;
  if (seen[item] === number) fail(day, `item ${item} stands in two places`);
  seen[item] = number;
  if (isHead) {
    count.heads++;
    count.kilograms += day.pool.mass[item]!;
  } else {
    count.crates++;
    count.headsInCrates += day.pool.number[item]!;
  }
}

function visitList(count: Count, first: number, length: number, isHead: boolean): void {
  let item = first;
  for (let rank = 0; rank < length; rank++) {
    visit(count, item, isHead);
    item = count.day.pool.next[item]!;
  }
}

function visitTravelling(count: Count, stage: number): void {
  const { day } = count;
  let item = day.travelling.first[stage]!;
  for (let rank = 0; rank < day.travelling.length[stage]!; rank++) {
    visit(count, item, isHeadStage(day, stage));
    count.bound[day.pool.sendTo[item]!]!++;
    item = day.pool.next[item]!;
  }
}

/** What is at the stage takes a place each, and so does what is on its way to it. */
function checkStage(count: Count, stage: number): void {
  const { day } = count;
  const { stages, supply } = day.line;
  // A head at a station on a chain hangs on the chain and is counted there.
  if (stages.kind[stage] === CHAIN_STATION) return;
  const before = count.heads + count.crates;
  if (stages.kind[stage] === CHAIN) visitRing(count, stages.chain[stage]!);
  else {
    visitList(count, day.queue.first[stage]!, day.queue.length[stage]!, isHeadStage(day, stage));
    if (stages.kind[stage] !== DWELL) visitPositions(count, stage);
  }
  const here = count.heads + count.crates - before;
  expectEqual(day, `places taken at ${stages.names[stage]}`, day.occupancy[stage]!, here + count.bound[stage]!);
  const unlimited = stage === stages.hanging && supply.kind === "stream" && !supply.turnAway;
  if (!unlimited && day.occupancy[stage]! > stages.places[stage]!) fail(day, `${stages.names[stage]} holds too many`);
}

function visitRing(count: Count, chain: number): void {
  for (let place = 0; place < count.day.line.chains.places[chain]!; place++) {
    const item = headAt(count.day, chain, place);
    if (item !== NONE) visit(count, item, true);
  }
}

function visitPositions(count: Count, stage: number): void {
  const { day } = count;
  const { positionFrom } = day.line.stages;
  for (let position = positionFrom[stage]!; position < positionFrom[stage + 1]!; position++) {
    if (day.item[position] !== NONE) visit(count, day.item[position]!, isHeadStage(day, stage));
    visitList(count, day.held.first[position]!, day.held.length[position]!, isHeadStage(day, stage));
  }
}

/** Live weight = by-products + out + on the line, to rounding. */
function checkMass(day: DayState, onLine: number): void {
  const found = sum(day.productKg) + sum(day.outKg) + onLine;
  if (Math.abs(found - day.liveKg) > 1e-9 * Math.max(1, day.liveKg))
    fail(day, `mass: ${found} against ${day.liveKg} kg`);
}

function checkCrews(day: DayState): void {
  const { names, peopleMax, count } = day.line.crews;
  for (let crew = 0; crew < count; crew++) {
    const busy = day.busyPeople[crew]!;
    if (busy < 0 || busy > peopleMax[crew]!) fail(day, `${names[crew]} has ${busy} people at work`);
  }
}

function isHeadStage(day: DayState, stage: number): boolean {
  return stage >= day.line.stages.hanging;
}

function sum(column: Float64Array | Int32Array): number {
  let total = 0;
  for (const value of column) total += value;
  return total;
}

function expectEqual(day: DayState, what: string, left: number, right: number): void {
  if (left !== right) fail(day, `${what}: ${left} against ${right}`);
}

function fail(day: DayState, what: string): never {
  throw new ConservationError(`at ${day.now} s (event ${day.events}): ${what}`);
}
