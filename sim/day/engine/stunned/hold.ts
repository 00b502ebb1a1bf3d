import { sendPeople } from "../dispatch.ts";
import { explainIdle, hasWork, startWaiting } from "../flow.ts";
import { isHeld } from "../gates.ts";
import type { DayState } from "../state/dayState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { secondsUntilClear } from "./secondsUntilClear.ts";

/*
 * The hold: the stunner begins a head only when all that happens at the instant is over and nothing that is known then
 * would make the head wait before it is stuck.
 */

/** Something happened: a stunner with work, and without a reason of its own to wait, looks again when the instant is over. */
export function noteEvent(day: DayState, care: StunnedState): void {
  if (!care.hold || care.from.idle === 0 || !hasWork(day, care.from)) return;
  care.looks = true;
  day.path?.callsHold();
}

/** The time is over that the stunner had to wait. */
export function turnHold(day: DayState): void {
  day.calendar.schedule(day.slots.hold, Infinity);
}

/** The stunner begins one head if it may; then it looks again. */
export function look(day: DayState, care: StunnedState): void {
  const { from } = care;
  care.looks = false;
  care.isClosed = false;
  day.path?.recallHold();
  if (from.idle === 0 || !hasWork(day, from) || from.pauses > 0 || isHeld(day, from)) {
    day.calendar.schedule(day.slots.hold, Infinity);
    if (from.idle > 0) explainIdle(day, from);
    return;
  }
  const wait = secondsUntilClear(day, care);
  care.isClosed = wait > 0;
  if (care.isClosed) waitFor(day, wait);
  else begin(day, care);
}

function waitFor(day: DayState, seconds: number): void {
  const { from } = day.stunned!;
  explainIdle(day, from);
  if (seconds < Infinity) day.path?.holdWaits();
  day.calendar.schedule(day.slots.hold, day.now + seconds);
}

function begin(day: DayState, care: StunnedState): void {
  const { from } = care;
  const idle = from.idle;
  day.calendar.schedule(day.slots.hold, Infinity);
  care.mayBegin = true;
  startWaiting(day, from);
  if (from.people > 0) sendPeople(day);
  care.mayBegin = false;
  if (from.idle < idle && from.idle > 0 && hasWork(day, from)) care.looks = true;
}
