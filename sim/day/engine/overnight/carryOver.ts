import { DWELL, FLEET_BACK, NO_LIMIT } from "../../line/index.ts";
import { noteQueue } from "../accounting.ts";
import { admitLoads } from "../arrivals.ts";
import { beginDwelling, hasWork, startWaiting } from "../flow.ts";
import { visitList, visitPresent } from "../present.ts";
import { addReturn } from "../returns.ts";
import { type DayState, NONE } from "../state/dayState.ts";
import type { Item } from "../state/item.ts";
import type { LoadState } from "../state/loadState.ts";
import type { StageState } from "../state/stageState.ts";
import { callEmptyings, keepVessels } from "./keepVessels.ts";
import { keepDwelling, keepWaiting, type LoadOf } from "./keptHeads.ts";

/** The day that has ended, seconds from its start to that of the new one, and whether machines come from the night as new. */
interface LastDay {
  day: DayState;
  secondsBefore: number;
  machinesAsNew: boolean;
}

/**
 * What stays in the plant until the next day: animals in lairage and before the hanging point, carcasses that nobody takes
 * out of the chiller any more, what is in vessels, machines' uptimes, crates and lorries. All times go over to the new day's clock, on which they lie before 0.
 *
 * A crate in hand when the day ended is taken in hand anew. What was being emptied is empty in the morning, and a repair
 * under way is done; both are the night's work.
 */
export function carryOver(last: LastDay, day: DayState): void {
  const { day: before, secondsBefore: later } = last;
  keepLoads(before, day, later);
  const loadOf = ({ load }: Item) => (load === NONE ? NONE : before.loadAt[load]!.index);
  for (const stage of before.stageAt) {
    const here = day.stageAt[stage.index]!;
    if (!stage.takesHeads) keepCrates(day, stage, here, loadOf);
    else if (stage.kind === DWELL) keepDwelling(day, stage, here, { later, loadOf });
    else keepWaiting(day, stage, here, { later, loadOf });
  }
  keepCratesAtHanging(before, day, loadOf);
  keepFleet(before, day, later);
  keepVessels(before, day);
  if (!last.machinesAsNew) keepUptimes(before, day);
  for (const { index, learning } of before.stageAt) {
    if (learning !== null) day.stageAt[index]!.learning!.heads = learning.heads;
  }
}

/** What could begin at once does, when the day's supply has begun. */
export function callKept(day: DayState): void {
  callEmptyings(day);
  bringThoseOfTheNight(day);
  for (const stage of day.stageAt) {
    if (stage.kind === DWELL) beginDwelling(day, stage);
    else if (hasWork(day, stage)) startWaiting(day, stage);
  }
}

/** Loads of which a head, a crate or the lorry is still there, or that have not come yet, stand behind the new day's own. */
function keepLoads(before: DayState, day: DayState, later: number): void {
  const due = before.loadsDue.slice(before.loadRow);
  const there = new Set([...loadsPresent(before), ...before.lorries, ...before.loadsWaiting, ...due]);
  for (const load of before.loadAt) {
    if (!there.has(load)) continue;
    load.goInto(day.loadAt.length, later);
    day.loadAt.push(load);
    if (load.withdrawnAt !== NONE) day.withdraws = true;
    if (due.includes(load) && load.arrived > 0) day.loadsDue.push(load);
    else day.toHang += load.headsLeft;
  }
  day.loadsDue.sort((a, b) => a.arrived - b.arrived || a.index - b.index);
  day.loadsWaiting.push(...before.loadsWaiting, ...due.filter(({ arrived }) => arrived <= 0));
  day.lorries.push(...before.lorries);
}

function loadsPresent(before: DayState): LoadState[] {
  const rows = new Set<number>();
  visitPresent(before, ({ load }) => rows.add(load));
  visitList(before.atHanging, ({ load }) => rows.add(load));
  return before.loadAt.filter((_, row) => rows.has(row));
}

/** Lorries that came in the night stand there; their animals have waited since they came. */
function bringThoseOfTheNight(day: DayState): void {
  const came = day.loadsWaiting.map((load) => [load, load.arrived] as const);
  admitLoads(day);
  for (const [load, arrived] of came) if (!day.loadsWaiting.includes(load)) load.arrived = arrived;
}

/** Crates on their way to the hanging point stay where they were: those in hand first, then those that waited. */
function keepCrates(day: DayState, stage: StageState, here: StageState, loadOf: LoadOf): void {
  const keep = (crate: Item, at: StageState) => keepCrate(day, at, loadOf(crate), crate.number);
  for (const { item, held } of stage.positions) {
    if (item !== null) keep(item, here);
    visitList(held, (crate) => keep(crate, here));
  }
  visitList(stage.queue, (crate) => keep(crate, here));
  // What was on its way has its place at the next step.
  visitList(stage.travelling, (crate) => keep(crate, day.stageAt[crate.sendTo]!));
}

export function keepCrate(day: DayState, here: StageState, load: number, heads: number): void {
  const crate = day.pool.take();
  crate.load = load;
  crate.number = heads;
  here.occupancy++;
  here.queue.push(crate);
  noteQueue(day, here, here.queue.length);
  noteKept(day, heads);
}

function noteKept(day: DayState, heads: number): void {
  day.keptCrated += heads;
  day.arrived += heads;
}

function keepCratesAtHanging(before: DayState, day: DayState, loadOf: LoadOf): void {
  let heads = 0;
  visitList(before.atHanging, (old) => {
    const crate = day.pool.take();
    crate.load = loadOf(old);
    crate.number = old.number;
    heads += old.number;
    day.atHanging.push(crate);
  });
  if (heads === 0) return;
  noteQueue(day, day.hanging, heads);
  noteKept(day, heads);
}

function keepFleet(before: DayState, day: DayState, later: number): void {
  const { supply } = before.line;
  day.cleanCrates = before.cleanCrates;
  if (supply.kind !== "loads" || supply.fleet === NO_LIMIT) return;
  day.fleetFree = before.fleetFree;
  for (const back of before.returns) {
    if (back.action !== FLEET_BACK) continue;
    // What sent them away was before the day began.
    const owed = { bound: day.path?.snapshot(), boundSince: 0 };
    addReturn(day, { ...back, ...owed, seconds: Math.max(0, back.seconds - later) });
  }
}

/** Clocks of breakdowns stand at night. */
function keepUptimes(before: DayState, day: DayState): void {
  for (const breakdown of before.breakdownAt) {
    if (breakdown.isDown) continue;
    const { slot, onRunningTime, index, isReplacement } = breakdown;
    const isCounting = slot >= 0 && !onRunningTime;
    const here = day.breakdownAt[index]!;
    here.isReplacement = isReplacement;
    here.uptimeLeft = isCounting ? before.calendar.times[slot]! - before.now : breakdown.uptimeLeft;
  }
}
