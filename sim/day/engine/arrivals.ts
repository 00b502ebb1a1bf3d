import { type CompiledLoads, NO_LIMIT } from "../line/index.ts";
import { noteQueue } from "./accounting.ts";
import { startWaiting } from "./flow.ts";
import { joinLine } from "./hanging.ts";
import { checkFinished } from "./leaveLine.ts";
import { beginOwnTime } from "./ownTime.ts";
import type { DayState } from "./state/dayState.ts";
import type { LoadState } from "./state/loadState.ts";

/** Sets the supply going at the day's start. */
export function startSupply(day: DayState): void {
  const { supply } = day.line;
  if (supply.kind === "saturated") {
    beginOwnTime(day, day.hanging);
    startWaiting(day, day.hanging);
  } else if (supply.kind === "stream") {
    day.toHang = supply.heads;
    scheduleHead(day);
  } else {
    for (const load of day.loadsDue) day.toHang += load.headsLeft;
    scheduleLoad(day);
    // On a day on which no lorry comes nothing else would end it.
    if (day.toHang === 0) checkFinished(day);
  }
}

/** A lorry is due; it comes when the fleet has crates for it. */
export function loadArrives(day: DayState): void {
  day.loadsWaiting.push(day.loadsDue[day.loadRow++]!);
  scheduleLoad(day);
  admitLoads(day);
}

/** Loads that are due come in their order, as far as the fleet's crates reach. */
export function admitLoads(day: DayState): void {
  const { supply } = day.line;
  if (supply.kind !== "loads") return;
  while (day.loadsWaiting.length > 0 && day.fleetFree >= day.loadsWaiting[0]!.crates) {
    bringLoad(day, supply, day.loadsWaiting.shift()!);
  }
}

/** A lorry is there: its crates wait on it for unloading. */
function bringLoad(day: DayState, supply: CompiledLoads, load: LoadState): void {
  const unloading = day.stageAt[supply.unloading]!;
  if (supply.fleet !== NO_LIMIT) day.fleetFree -= load.crates;
  load.arrived = day.now;
  load.cameAtAll = true;
  if (supply.firstBack >= 0) day.lorries.push(load);
  for (let number = 0; number < load.crates; number++) {
    const crate = day.pool.take();
    crate.load = load.index;
    crate.number = load.headsPerCrate;
    unloading.occupancy++;
    unloading.queue.push(crate);
  }
  noteArrived(day, load.crates * load.headsPerCrate);
  noteQueue(day, unloading, unloading.queue.length);
  startWaiting(day, unloading);
}

/** A single head arrives; without a place it waits outside or is turned away. */
export function headArrives(day: DayState): void {
  const { hanging } = day;
  const { supply } = day.line;
  if (supply.kind !== "stream") return;
  day.toHang--;
  noteArrived(day, 1);
  scheduleHead(day);
  if (supply.turnAway && hanging.occupancy >= hanging.places) {
    day.turnedAway++;
    checkFinished(day);
    return;
  }
  joinLine(day, day.pool.take(), null, day.now);
  noteQueue(day, hanging, hanging.queue.length);
  startWaiting(day, hanging);
}

function noteArrived(day: DayState, heads: number): void {
  day.arrived += heads;
  day.recorders?.arrived.set(day.now, day.arrived);
}

function scheduleLoad(day: DayState): void {
  const { slots } = day.line;
  day.calendar.schedule(slots.supply, day.loadsDue[day.loadRow]?.arrived ?? Infinity);
}

function scheduleHead(day: DayState): void {
  const next = day.toHang > 0 ? day.now + day.interarrival!.draw() : Infinity;
  day.calendar.schedule(day.slots.supply, next);
}
