import { DWELL } from "../line/index.ts";
import { type DayState, NONE } from "./dayState.ts";

/** Heads, crates or people were lost or doubled: a fault of the engine, never of a plan. */
export class ConservationError extends Error {
  override name = "ConservationError";
}

/** Counts every head and crate where it stands and compares with the running figures. Cost: all that is present. */
export function checkConservation(day: DayState): void {
  const { stages, supply } = day.line;
  let onLine = 0;
  let inCrates = 0;
  let items = day.atHanging.length[0]! + 0;
  for (let stage = 0; stage < stages.count; stage++) {
    const present = itemsAt(day, stage);
    items += present.length;
    if (stage >= stages.hanging) onLine += present.length;
    else inCrates += headsIn(day, present);
    checkPlaces(day, stage);
  }
  inCrates += headsIn(day, listed(day, day.atHanging.first[0]!, day.atHanging.length[0]!));
  const out = day.out.reduce((sum, heads) => sum + heads, 0);
  expectEqual(day, "heads on the line", onLine, day.headsOnLine);
  expectEqual(day, "heads and crates present", items, day.pool.live);
  if (supply.kind === "loads") expectEqual(day, "heads hung and not hung", day.arrived, inCrates + day.hung);
  if (day.watchedFrom > 0) return;
  expectEqual(day, "heads arrived", day.arrived, inCrates + day.turnedAway + onLine + out);
  expectEqual(
    day,
    "heads by section",
    onLine,
    day.sectionHeads.reduce((sum, heads) => sum + heads, 0),
  );
}

function checkPlaces(day: DayState, stage: number): void {
  const { stages, supply } = day.line;
  const inward = stage > 0 && stages.next[stage - 1] === stage ? day.travelling.length[stage - 1]! : 0;
  const here = day.queue.length[stage]! + itemsInWork(day, stage).length;
  expectEqual(day, `places taken at ${stages.names[stage]}`, day.occupancy[stage]!, here + inward);
  const unlimited = stage === stages.hanging && supply.kind === "stream" && !supply.turnAway;
  if (!unlimited && day.occupancy[stage]! > stages.places[stage]!) fail(day, `${stages.names[stage]} holds too many`);
}

/** Waiting, in work or dwelling, and on the way out. */
function itemsAt(day: DayState, stage: number): number[] {
  return [
    ...listed(day, day.queue.first[stage]!, day.queue.length[stage]!),
    ...itemsInWork(day, stage),
    ...listed(day, day.travelling.first[stage]!, day.travelling.length[stage]!),
  ];
}

function itemsInWork(day: DayState, stage: number): number[] {
  const { stages } = day.line;
  if (stages.kind[stage] === DWELL) return [];
  const items = day.item.subarray(stages.positionFrom[stage]!, stages.positionFrom[stage + 1]!);
  return Array.from(items).filter((item) => item !== NONE);
}

function listed(day: DayState, first: number, length: number): number[] {
  const items: number[] = [];
  for (let item = first; items.length < length; item = day.pool.next[item]!) items.push(item);
  return items;
}

function headsIn(day: DayState, crates: number[]): number {
  return crates.reduce((sum, crate) => sum + day.pool.number[crate]!, 0);
}

function expectEqual(day: DayState, what: string, left: number, right: number): void {
  if (left !== right) fail(day, `${what}: ${left} against ${right}`);
}

function fail(day: DayState, what: string): never {
  throw new ConservationError(`at ${day.now} s (event ${day.events}): ${what}`);
}
