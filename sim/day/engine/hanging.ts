import { noteSection } from "./accounting.ts";
import type { DayState } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import { ENTRY, passArrival, passPoint } from "./watchLimits.ts";

/** True when the first stage may take a head out of the supply now (heads of a stream stand in its buffer instead). */
export function supplyHasHead(day: DayState): boolean {
  if (day.hangingClosed) return false;
  const { kind } = day.line.supply;
  if (kind === "saturated") return true;
  return kind === "loads" && day.atHanging.length > 0 && day.atHanging.first!.number > 0;
}

/** Puts the next head of the supply into the first stage's queue. True when its crate is empty now. */
export function claimHead(day: DayState): boolean {
  const item = day.pool.take();
  if (day.line.supply.kind === "saturated") {
    joinLine(day, item, -1, day.now);
    day.arrived++;
    return false;
  }
  const crate = day.atHanging.first!;
  const load = crate.load;
  day.toHang--;
  joinLine(day, item, load, day.loadArrived[load]!);
  if (--day.loadHeadsLeft[load]! === 0) day.loadEmptied[load] = day.now;
  markDead(day, item, load);
  return --crate.number === 0;
}

/** A head enters the first stage: from here on it counts as being on the line. */
export function joinLine(day: DayState, item: Item, load: number, arrived: number): void {
  const { hanging } = day;
  const weight = day.liveWeight[Math.max(load, 0)]!.draw();
  item.weight = weight;
  item.mass = weight;
  day.liveKg += weight;
  item.load = load;
  item.arrived = arrived;
  item.number = day.hung;
  day.recorders?.heads?.begin(day.hung, load, arrived);
  day.hung++;
  day.headsOnLine++;
  hanging.occupancy++;
  noteSection(day, hanging.section, 1);
  passArrival(day, item);
  passPoint(day, item, hanging, ENTRY);
  hanging.queue.push(item);
}

/** One draw per head of the load, dead or not, so that another share keeps every other head's fate in step. */
function markDead(day: DayState, item: Item, load: number): void {
  const draw = day.deadDraw[load];
  const { supply } = day.line;
  if (!draw || supply.kind !== "loads") return;
  const dead = draw.next() < supply.loads[load]!.deadOnArrivalShare;
  item.destination = dead ? DEAD_ON_ARRIVAL_INDEX : -1;
}

/** Destination order is fixed by the compiler: carcass, dead on arrival, then removals. */
const DEAD_ON_ARRIVAL_INDEX = 1;
