import { noteQueue, setState } from "./accounting.ts";
import {
  BLOCKED,
  type DayState,
  DOWN,
  MOVES,
  NONE,
  ON_BREAK,
  STANDS,
  STANDS_DOWN,
  STANDS_PAUSE,
  WORKING,
} from "./dayState.ts";
import type { StageState } from "./stageState.ts";

/*
 * The shackles of a chain as a ring: place 0 is the loading point, the last place the unloading point. The chain moves in
 * steps of one shackle. Only looking, putting and taking here; what follows from a step is in chainMoves.ts.
 */

export function headAt(day: DayState, chain: number, place: number): number {
  return day.shackles[cell(day, chain, place)]!;
}

export function chainStage(day: DayState, chain: number): StageState {
  return day.stageAt[day.chains.stage[chain]!]!;
}

/** A head is hung on the shackle at the loading point. */
export function hangOn(day: DayState, chain: number, item: number): void {
  const stage = chainStage(day, chain);
  day.shackles[cell(day, chain, 0)] = item;
  day.freeShackles[chain]!--;
  noteQueue(day, stage, stage.shown.heads + 1);
}

/** The head at the unloading point is taken off; its shackle goes back through the washer. */
export function takeOff(day: DayState, chain: number): void {
  const { places, backSeconds } = day.chains;
  const stage = chainStage(day, chain);
  day.shackles[cell(day, chain, places[chain]! - 1)] = NONE;
  day.shacklesBack[chain]!.push(day.now + backSeconds[chain]!);
  noteQueue(day, stage, stage.shown.heads - 1);
}

/** One shackle further: what was at place k is at k + 1, an empty shackle comes to the loading point. */
export function turnRing(day: DayState, chain: number): void {
  const shift = day.ringShift[chain]! + 1;
  day.ringShift[chain] = shift === day.chains.places[chain] ? 0 : shift;
}

/**
 * True when there is an empty shackle at the loading point. On a chain of one shackle the loading point is the unloading
 * point: nothing is hung on while its step is due.
 */
export function canHangOn(day: DayState, chain: number): boolean {
  if (day.chains.places[chain] === 1 && day.chainDue[chain]) return false;
  return headAt(day, chain, 0) === NONE && day.freeShackles[chain]! > 0;
}

/** Shackles that came back during the last step are there from the next one on. */
export function bringShackles(day: DayState, chain: number): void {
  const back = day.shacklesBack[chain]!;
  while (back.length > 0 && back[0]! <= day.now) {
    back.shift();
    day.freeShackles[chain]!++;
  }
}

/** Books the time the chain stood for its reason (or moved) and notes the new one. */
export function setStand(day: DayState, chain: number, reason: number): void {
  bookStand(day, chain);
  if (day.stand[chain] === reason) return;
  day.stand[chain] = reason;
  noteChainActive(day, chain);
  setState(day, chainStage(day, chain).positions[0]!, stateOf(reason));
}

/** A chain that moves is active as a bottleneck may be while a head waits to be hung on it. */
export function noteChainActive(day: DayState, chain: number): void {
  if (day.active === null) return;
  const { waiters, positions } = chainStage(day, chain);
  const isActive = day.stand[chain] === MOVES && waiters.first !== null;
  day.active.turn(positions[0]!.index, isActive, day.now);
}

export function bookStand(day: DayState, chain: number): void {
  day.standSeconds[chain * STANDS + day.stand[chain]!]! += day.now - day.standSince[chain]!;
  day.standSince[chain] = day.now;
}

function stateOf(reason: number): number {
  if (reason === MOVES) return WORKING;
  if (reason === STANDS_DOWN) return DOWN;
  return reason === STANDS_PAUSE ? ON_BREAK : BLOCKED;
}

/** A station on the chain broke down, or the chain pauses: the step under way is interrupted. */
export function interruptChain(day: DayState, chain: number): void {
  if (day.chainStops[chain]! + day.chainPauses[chain]! === 1 && !day.chainDue[chain]) {
    const slot = day.chains.slot[chain]!;
    day.chainLeft[chain] = day.calendar.times[slot]! - day.now;
    day.path?.chainStops(day, chain);
    day.calendar.schedule(slot, Infinity);
  }
  setStand(day, chain, day.chainStops[chain]! > 0 ? STANDS_DOWN : STANDS_PAUSE);
}

/** One cause less; with the last one the step goes on, or the chain tries to move if its step is due. */
export function resumeChain(day: DayState, chain: number): void {
  if (day.chainStops[chain]! > 0) return;
  if (day.chainPauses[chain]! > 0) {
    setStand(day, chain, STANDS_PAUSE);
    return;
  }
  setStand(day, chain, MOVES);
  if (day.chainDue[chain]) {
    wakeChain(day, chain);
    return;
  }
  day.path?.chainGoesOn(day, chain);
  day.calendar.schedule(day.chains.slot[chain]!, day.now + day.chainLeft[chain]!);
}

/** The chain looks again, when the event is over, whether it can move. */
export function wakeChain(day: DayState, chain: number): void {
  if (!day.chainDue[chain]) return;
  day.chainWaits[chain] = 1;
  day.opened = true;
}

function cell(day: DayState, chain: number, place: number): number {
  const at = place - day.ringShift[chain]!;
  return day.ringFrom[chain]! + (at < 0 ? at + day.chains.places[chain]! : at);
}
