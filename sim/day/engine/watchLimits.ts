import { leaveGate } from "./gates.ts";
import type { DayState } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";

export const ENTRY = 0;
export const START = 1;
export const END = 2;
export const EXIT = 3;

/**
 * A head passes a point of its way: the near end of a limit is stamped, at the far end the time between is tallied, gates
 * that end here are left.
 */
export function passPoint(day: DayState, item: Item, stage: StageState, moment: number): void {
  if ((stage.watched & (1 << moment)) !== 0) notePass(day, item, stage.index, moment);
}

function notePass(day: DayState, item: Item, stage: number, moment: number): void {
  watch(day, item, stage * 4 + moment, day.now);
  day.recorders?.heads?.pass(item.number, stage, moment, day.now);
  day.killStops?.pass(item, stage, moment, day.now);
}

/** The same at a time of the night before, of a head that the kill line is behind. */
export function passPointAt(
  day: DayState,
  item: Item,
  stage: StageState,
  passing: { moment: number; time: number },
): void {
  const { moment, time } = passing;
  if ((stage.watched & (1 << moment)) === 0) return;
  watch(day, item, stage.index * 4 + moment, time);
  day.recorders?.heads?.pass(item.number, stage.index, moment, time);
}

/** The head hung now: its way began when its load arrived. */
export function passArrival(day: DayState, item: Item): void {
  watch(day, item, day.stages.count * 4, item.arrived);
}

export function passExit(day: DayState, item: Item): void {
  watch(day, item, day.stages.count * 4 + 1, day.now);
}

/** The head is past a point without having done what is done there: gates that end there are left, limits see nothing. */
export function passGates(day: DayState, item: Item, stage: StageState, moment: number): void {
  leaveGatesAt(day, item, stage.index * 4 + moment);
}

/** Somebody who was called does the work where the head is: limits and the table of heads see it, gates do not. */
export function passHelped(day: DayState, item: Item, stage: StageState, moment: number): void {
  watchTimes(day, item, stage.index * 4 + moment, day.now);
  day.recorders?.heads?.pass(item.number, stage.index, moment, day.now);
}

/** The head is stunned again: the time since it was stunned counts, and is not counted once more. */
export function tallyFromStunning(day: DayState, item: Item): void {
  for (const limit of day.line.stunned!.limits) {
    tallyLimit(day, limit, day.now - item.stamps[limit]!);
    item.stamps[limit] = Number.NaN;
  }
}

function leaveGatesAt(day: DayState, item: Item, point: number): void {
  const { gateFrom, gate } = day.points;
  for (let row = gateFrom[point]!; row < gateFrom[point + 1]!; row++) leaveGate(day, gate[row]!, item);
}

function watch(day: DayState, item: Item, point: number, time: number): void {
  watchTimes(day, item, point, time);
  leaveGatesAt(day, item, point);
}

function watchTimes(day: DayState, item: Item, point: number, time: number): void {
  const { limitFrom, limit: limits } = day.points;
  for (let row = limitFrom[point]!; row < limitFrom[point + 1]!; row++) {
    const limit = limits[row]! >> 1;
    if ((limits[row]! & 1) === 0) item.stamps[limit] = time;
    else if (limit < day.limits.count) tallyLimit(day, limit, time - item.stamps[limit]!);
    else item.stamps[limit + day.points.spans] = time - item.stamps[limit]!;
  }
}

/** A head that never passed the near end (it was taken off before) has no time to judge. */
function tallyLimit(day: DayState, limit: number, seconds: number): void {
  if (Number.isNaN(seconds)) return;
  day.limitTallies[limit]!.add(seconds);
  const { minSeconds, maxSeconds } = day.limits;
  if (seconds > maxSeconds[limit]! || seconds < minSeconds[limit]!) day.headsOverLimit[limit]!++;
}
