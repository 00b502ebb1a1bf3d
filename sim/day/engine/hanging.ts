import { noteSection } from "./accounting.ts";
import { type DayState, NONE } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { LoadState } from "./state/loadState.ts";
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
    joinLine(day, item, null, day.now);
    day.arrived++;
    return false;
  }
  const crate = day.atHanging.first!;
  const load = day.loadAt[crate.load]!;
  day.toHang--;
  joinLine(day, item, load, load.arrived);
  if (--load.headsLeft === 0) load.emptied = day.now;
  markDead(item, load);
  return --crate.number === 0;
}

/** A head enters the first stage: from here on it counts as being on the line. */
export function joinLine(day: DayState, item: Item, load: LoadState | null, arrived: number): void {
  const { hanging } = day;
  const weight = (load?.liveWeight ?? day.liveWeight!).draw();
  item.weight = weight;
  item.mass = weight;
  day.liveKg += weight;
  item.load = load?.index ?? NONE;
  load?.noteHung(weight, day.now);
  item.arrived = arrived;
  item.number = day.keptHeads + day.hung;
  day.recorders?.heads?.begin(item.number, item.load, arrived);
  day.hung++;
  day.headsOnLine++;
  hanging.occupancy++;
  noteSection(day, hanging.section, 1);
  passArrival(day, item);
  passPoint(day, item, hanging, ENTRY);
  hanging.queue.push(item);
}

/** One draw per head of the load, dead or not, so that another share keeps every other head's fate in step. */
function markDead(item: Item, { deadDraw, deadOnArrivalShare }: LoadState): void {
  if (deadDraw === null) return;
  item.destination = deadDraw.next() < deadOnArrivalShare ? DEAD_ON_ARRIVAL_INDEX : NONE;
}

/** Destination order is fixed by the compiler: carcass, dead on arrival, then removals. */
const DEAD_ON_ARRIVAL_INDEX = 1;
