import { CHAIN_STATION } from "../line/index.ts";
import { visitList, visitMoving, waitsInQueue } from "./present.ts";
import type { DayState } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";

/** Heads, crates, people or kilograms were lost or doubled: a fault of the engine, never of a plan. */
export class ConservationError extends Error {
  override name = "ConservationError";
}

/**
 * A list longer than this is walked when its ends, its length or what its stage took off have changed, and at every so many
 * counts; else what was found in it last stands. So a day with thousands of carcasses in a chiller can be checked at every event.
 */
const MAX_WALKED = 32;
const COUNTS_BETWEEN_WALKS = 256;

/** What was found in one list. */
class Found {
  heads = 0;
  crates = 0;
  headsInCrates = 0;
  kilograms = 0;
  /** The count in which it was walked last, and what it looked like then. */
  number = 0;
  first: Item | null = null;
  last: Item | null = null;
  length = -1;
  takenOff = Number.NaN;

  begin(number: number): void {
    this.number = number;
    this.heads = 0;
    this.crates = 0;
    this.headsInCrates = 0;
    this.kilograms = 0;
  }
}

/** Counts of everything that is present, one after another. */
class Count {
  number = 0;
  /** Queues by stage, and behind them all that moves, works or rides. */
  readonly lists: readonly Found[];
  readonly moving: Found;
  /** By stage: items there or on their way to it. */
  readonly taken: Int32Array;
  /** By item: the list in which it was met last, and in which count. */
  private metIn: Int32Array = new Int32Array(0);
  private metAt: Int32Array = new Int32Array(0);

  constructor(day: DayState) {
    this.lists = day.stageAt.map(() => new Found());
    this.moving = new Found();
    this.taken = new Int32Array(day.stages.count);
  }

  begin(day: DayState): void {
    this.number++;
    this.taken.fill(0);
    if (this.metIn.length < day.pool.made) {
      this.metIn = longer(this.metIn, day.pool.made);
      this.metAt = longer(this.metAt, day.pool.made);
    }
    this.moving.begin(this.number);
  }

  meet(day: DayState, item: Item, list: number, isHead: boolean): void {
    const found = this.listAt(list);
    const before = this.listAt(this.metIn[item.row]!);
    // Of a list that is not walked this time all that was met in it is still there.
    if (this.metAt[item.row] === before.number) fail(day, `item ${item.row} stands in two places`);
    this.metIn[item.row] = list;
    this.metAt[item.row] = this.number;
    if (isHead) {
      found.heads++;
      found.kilograms += item.mass;
    } else {
      found.crates++;
      found.headsInCrates += item.number;
    }
  }

  total(key: "heads" | "crates" | "headsInCrates" | "kilograms"): number {
    let total = this.moving[key];
    for (const found of this.lists) total += found[key];
    return total;
  }

  private listAt(list: number): Found {
    return this.lists[list] ?? this.moving;
  }
}

function longer(column: Int32Array, length: number): Int32Array {
  const grown = new Int32Array(2 * length);
  grown.set(column);
  return grown;
}

const counts = new WeakMap<DayState, Count>();

/** Counts every head and crate where it stands and compares with the running figures. */
export function checkConservation(day: DayState): void {
  const { supply } = day.line;
  const count = countPresent(day);
  const heads = count.total("heads");
  const headsInCrates = count.total("headsInCrates");
  for (const stage of day.stageAt) checkPlaces(day, stage, count.taken[stage.index]!);
  expectEqual(day, "heads on the line", heads, day.headsOnLine);
  expectEqual(day, "heads and crates present", heads + count.total("crates"), day.pool.live);
  if (supply.kind === "loads") expectEqual(day, "heads hung and not hung", day.arrived, headsInCrates + day.hung);
  checkMass(day, count.total("kilograms"));
  checkCrews(day);
  if (day.watchedFrom > 0) return;
  const found = headsInCrates + day.turnedAway + heads + sum(day.out);
  expectEqual(day, "heads arrived", day.arrived + day.keptHeads, found);
  expectEqual(
    day,
    "heads by section",
    heads,
    day.inSection.reduce((inAll, inside) => inAll + inside.heads, 0),
  );
}

function countPresent(day: DayState): Count {
  let count = counts.get(day);
  if (count === undefined) {
    count = new Count(day);
    counts.set(day, count);
  }
  count.begin(day);
  // First all lists that will be walked forget what was in them: what moved from one to the other stands in one.
  for (const stage of day.stageAt) if (isToBeWalked(day, stage, count)) count.lists[stage.index]!.begin(count.number);
  for (const stage of day.stageAt) countAt(day, stage, count);
  const moving = count.lists.length;
  visitList(day.atHanging, (crate) => count.meet(day, crate, moving, false));
  return count;
}

function isToBeWalked(day: DayState, { index, queue }: StageState, { lists, number }: Count): boolean {
  const found = lists[index]!;
  const { first, last, length } = queue;
  const takenOff = takenOffAt(day, index);
  const isSame = length === found.length && takenOff === found.takenOff && first === found.first && last === found.last;
  if (isSame && length > MAX_WALKED && number % COUNTS_BETWEEN_WALKS !== 0 && !day.finished) return false;
  found.first = first;
  found.last = last;
  found.length = length;
  found.takenOff = takenOff;
  return true;
}

/** Kilograms so far of what the stage takes off: while they stay, so does what is left of the heads that wait there. */
function takenOffAt({ productKg, stageAt, stages }: DayState, stage: number): number {
  const { productFrom, productTo } = stageAt[stage]!;
  let total = 0;
  for (let row = productFrom; row < productTo; row++) total += productKg[stages.productName[row]!]!;
  return total;
}

/** What waits or dwells at the stage, and all that moves on from it, works there or rides. */
function countAt(day: DayState, stage: StageState, count: Count): void {
  const { index, takesHeads, queue } = stage;
  const moving = count.lists.length;
  visitMoving(stage, (item, travelling) => {
    count.meet(day, item, moving, takesHeads);
    // To the hanging point or a lorry nothing travels.
    count.taken[travelling ? item.sendTo : index]!++;
  });
  if (!waitsInQueue(stage)) return;
  count.taken[index]! += queue.length;
  if (count.lists[index]!.number === count.number) visitList(queue, (item) => count.meet(day, item, index, takesHeads));
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
