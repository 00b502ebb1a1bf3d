import { forgetWarmUp } from "./accounting.ts";
import { leaveAllGates } from "./gates.ts";
import { type DayState, NONE } from "./state/dayState.ts";
import { type Item, UNDRAINED } from "./state/item.ts";
import type { PositionState } from "./state/positionState.ts";
import type { StageState } from "./state/stageState.ts";
import { noteGone } from "./stunned/late.ts";
import { passExit } from "./watchLimits.ts";

const CARCASS_INDEX = 0;

/** A head leaves the line for good, as a carcass or to one of the plan's other destinations. */
export function leaveLine(day: DayState, item: Item, destination: number): void {
  day.headsOnLine--;
  day.out[destination]!++;
  day.outKg[destination]! += item.mass;
  if (item.load !== NONE) day.loadAt[item.load]!.noteOut(destination, item.mass, day.now);
  if (destination === CARCASS_INDEX) {
    day.timeInSystem.add(day.now - item.arrived);
    day.carcassLiveKg += item.weight;
    if (day.leaves !== null) day.leaves(item.mass);
    passExit(day, item);
    day.recorders?.out.set(day.now, day.out[CARCASS_INDEX]!);
  }
  leaveAllGates(day, item);
  if (day.stunned !== null) noteGone(day, day.stunned, item);
  day.recorders?.heads?.end(item.number, destination);
  day.killStops?.leave(item.number, day.now);
  day.pool.give(item);
  checkFinished(day);
}

/** The day is over when nothing is left to process and the crates are back; a capacity run when it has its heads. */
export function checkFinished(day: DayState): void {
  const { supply } = day.line;
  const carcasses = day.out[CARCASS_INDEX]!;
  const warmUp = day.options.warmUpHeads ?? 0;
  if (warmUp > 0 && day.watchedFrom === 0 && carcasses >= warmUp) {
    forgetWarmUp(day);
    day.path?.warmUpEnds();
  } else if (supply.kind === "saturated" && carcasses >= supply.heads) day.finished = true;
  else day.finished = isClear(day) && (day.options.goesOn !== true || cratesStand(day));
  if (day.finished) day.path?.dayEnds();
}

/** Nobody is left who would leave the line today. */
export function isClear(day: DayState): boolean {
  return day.headsOnLine - keptOvernight(day) === notHung(day) && day.emptyCrates === 0 && noMoreHeads(day);
}

/** Heads in stages that nobody leaves any more today; one that waits for a place behind its stage still goes. */
function keptOvernight({ stageAt }: DayState): number {
  let heads = 0;
  for (const stage of stageAt) if (stage.isClosed) heads += stage.queue.length - goingOut(stage.positions[0]!);
  return heads;
}

function goingOut({ item }: PositionState): number {
  return item !== null && (item.flags & UNDRAINED) === 0 ? 1 : 0;
}

/** Crates that came stand in lairage, or as near to it as there is room. */
function cratesStand({ line, stageAt }: DayState): boolean {
  const { supply } = line;
  if (supply.kind !== "loads") return true;
  for (let step = 0; step < supply.feeding; step++) {
    const stage = stageAt[step]!;
    if (stage.occupancy > 0 && !isFilled(stageAt[step + 1]!)) return false;
  }
  return true;
}

function isFilled({ occupancy, places }: StageState): boolean {
  return occupancy >= places;
}

/** Heads of a stream that still stand before the first stage when hanging has ended: they stay there. */
export function notHung(day: DayState): number {
  return day.hangingClosed ? day.hanging.queue.length : 0;
}

/** No head will be hung any more. */
export function noMoreHeads(day: DayState): boolean {
  return day.hangingClosed || (day.line.supply.kind !== "saturated" && day.toHang === 0);
}
