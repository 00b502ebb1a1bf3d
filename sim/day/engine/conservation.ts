import { CHAIN_STATION } from "../line/index.ts";
import { visitList, visitPresent } from "./present.ts";
import type { DayState } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";

/** Heads, crates, people or kilograms were lost or doubled: a fault of the engine, never of a plan. */
export class ConservationError extends Error {
  override name = "ConservationError";
}

/** One count of everything that is present. `seen[item.row]` is the number of the count that met the item last. */
interface Count {
  seen: Int32Array;
  number: number;
  heads: number;
  crates: number;
  headsInCrates: number;
  kilograms: number;
  /** By stage: items there or on their way to it. */
  taken: Int32Array;
}

const counts = new WeakMap<DayState, Count>();

/** Counts every head and crate where it stands and compares with the running figures. Cost: all that is present. */
export function checkConservation(day: DayState): void {
  const { supply } = day.line;
  const count = countPresent(day);
  for (const stage of day.stageAt) checkPlaces(day, stage, count.taken[stage.index]!);
  expectEqual(day, "heads on the line", count.heads, day.headsOnLine);
  expectEqual(day, "heads and crates present", count.heads + count.crates, day.pool.live);
  if (supply.kind === "loads") expectEqual(day, "heads hung and not hung", day.arrived, count.headsInCrates + day.hung);
  checkMass(day, count.kilograms);
  checkCrews(day);
  if (day.watchedFrom > 0) return;
  const found = count.headsInCrates + day.turnedAway + count.heads + sum(day.out);
  expectEqual(day, "heads arrived", day.arrived + day.keptHeads, found);
  expectEqual(
    day,
    "heads by section",
    count.heads,
    day.inSection.reduce((heads, inside) => heads + inside.heads, 0),
  );
}

function countPresent(day: DayState): Count {
  const count = freshCount(day);
  visitPresent(day, (item, stage, travelling) => {
    meet(day, count, item, stage.takesHeads);
    // To the hanging point or a lorry nothing travels.
    count.taken[travelling ? item.sendTo : stage.index]!++;
  });
  visitList(day.atHanging, (crate) => meet(day, count, crate, false));
  return count;
}

function freshCount(day: DayState): Count {
  let count = counts.get(day);
  if (count === undefined || count.seen.length < day.pool.made) {
    const taken = new Int32Array(day.stages.count);
    const seen = new Int32Array(day.pool.made);
    count = { seen, number: 0, heads: 0, crates: 0, headsInCrates: 0, kilograms: 0, taken };
    counts.set(day, count);
  }
  count.number++;
  count.heads = 0;
  count.crates = 0;
  count.headsInCrates = 0;
  count.kilograms = 0;
  count.taken.fill(0);
  return count;
}

function meet(day: DayState, count: Count, item: Item, isHead: boolean): void {
  if (count.seen[item.row] === count.number) fail(day, `item ${item.row} stands in two places`);
  count.seen[item.row] = count.number;
  if (isHead) {
    count.heads++;
    count.kilograms += item.mass;
  } else {
    count.crates++;
    count.headsInCrates += item.number;
  }
}

/** What is at the stage takes a place each, and so does what is on its way to it. */
function checkPlaces(day: DayState, stage: StageState, taken: number): void {
  const { stages, supply } = day.line;
  if (stage.kind === CHAIN_STATION) return;
  const name = stages.names[stage.index]!;
  expectEqual(day, `places taken at ${name}`, stage.occupancy, taken);
  const unlimited = stage.isHanging && supply.kind === "stream" && !supply.turnAway;
  if (!unlimited && stage.occupancy > stage.places) fail(day, `${name} holds too many`);
}

/** Live weight = by-products + out + on the line, to rounding. */
function checkMass(day: DayState, onLine: number): void {
  const found = sum(day.productKg) + sum(day.outKg) + onLine;
  const came = day.liveKg + day.keptKg;
  if (Math.abs(found - came) > 1e-9 * Math.max(1, came)) fail(day, `mass: ${found} against ${came} kg`);
}

function checkCrews(day: DayState): void {
  for (const { index, busy, away, owing, peopleMax } of day.crewAt) {
    const name = day.line.crews.names[index];
    if (busy < 0 || busy > peopleMax) fail(day, `${name} has ${busy} people at work`);
    if (away < 0 || away > peopleMax) fail(day, `${name} has ${away} people on a break`);
    if (owing < 0 || owing > busy) fail(day, `${name} has ${owing} people bound for a break, ${busy} at work`);
  }
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
