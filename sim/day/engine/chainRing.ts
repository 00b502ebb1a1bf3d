import { noteQueue, setState } from "./accounting.ts";
import type { ChainState } from "./state/chainState.ts";
import { BLOCKED, type DayState, DOWN, MOVES, ON_BREAK, STANDS_DOWN, STANDS_PAUSE, WORKING } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import { startClocks, stopClocks } from "./uptime.ts";

/*
 * The shackles of a chain as a ring: place 0 is the loading point, the last place the unloading point. The chain moves in
 * steps of one shackle. Only looking, putting and taking here; what follows from a step is in chainMoves.ts.
 */

export function headAt(chain: ChainState, place: number): Item | null {
  return chain.shackles[cell(chain, place)]!;
}

export function headAtUnloading(chain: ChainState): Item | null {
  return headAt(chain, chain.places - 1);
}

/** A head is hung on the shackle at the loading point. */
export function hangOn(day: DayState, chain: ChainState, item: Item): void {
  chain.shackles[cell(chain, 0)] = item;
  chain.freeShackles--;
  noteQueue(day, chain.stage, chain.stage.shown.heads + 1);
}

/** The head at the unloading point is taken off; its shackle goes back through the washer. */
export function takeOff(day: DayState, chain: ChainState): void {
  chain.shackles[cell(chain, chain.places - 1)] = null;
  chain.shacklesBack.push(day.now + chain.backSeconds);
  noteQueue(day, chain.stage, chain.stage.shown.heads - 1);
}

/** One shackle further: what was at place k is at k + 1, an empty shackle comes to the loading point. */
export function turnRing(chain: ChainState): void {
  const shift = chain.shift + 1;
  chain.shift = shift === chain.places ? 0 : shift;
}

/**
 * True when there is an empty shackle at the loading point. On a chain of one shackle the loading point is the unloading
 * point: nothing is hung on while its step is due.
 */
export function canHangOn(chain: ChainState): boolean {
  if (chain.places === 1 && chain.isDue) return false;
  return headAt(chain, 0) === null && chain.freeShackles > 0;
}

/** Shackles that came back during the last step are there from the next one on. */
export function bringShackles(chain: ChainState, now: number): void {
  const { shacklesBack } = chain;
  while (shacklesBack.length > 0 && shacklesBack[0]! <= now) {
    shacklesBack.shift();
    chain.freeShackles++;
  }
}

/** Books the time the chain stood for its reason (or moved) and notes the new one. */
export function setStand(day: DayState, chain: ChainState, reason: number): void {
  bookStand(chain, day.now);
  if (chain.stand === reason) return;
  if (chain.stage.clocks.length > 0) turnChainClocks(day, chain, reason);
  chain.stand = reason;
  noteChainActive(day, chain);
  setState(day, chain.wayOut, stateOf(reason));
}

/** A chain runs while it moves. */
function turnChainClocks(day: DayState, { stage, stand }: ChainState, reason: number): void {
  if (reason === MOVES) startClocks(day, stage);
  else if (stand === MOVES) stopClocks(day, stage);
}

/** A chain that moves is active as a bottleneck may be while a head waits to be hung on it. */
export function noteChainActive(day: DayState, chain: ChainState): void {
  if (day.active === null) return;
  const isActive = chain.stand === MOVES && chain.stage.waiters.first !== null;
  day.active.turn(chain.wayOut.index, isActive, day.now);
}

export function bookStand(chain: ChainState, now: number): void {
  chain.standSeconds[chain.stand]! += now - chain.standSince;
  chain.standSince = now;
}

function stateOf(reason: number): number {
  if (reason === MOVES) return WORKING;
  if (reason === STANDS_DOWN) return DOWN;
  return reason === STANDS_PAUSE ? ON_BREAK : BLOCKED;
}

/** A station on the chain broke down, or the chain pauses: the step under way is interrupted. */
export function interruptChain(day: DayState, chain: ChainState): void {
  if (chain.downCauses + chain.pauses === 1 && !chain.isDue) {
    chain.left = day.calendar.times[chain.slot]! - day.now;
    day.path?.chainStops(day, chain);
    day.calendar.schedule(chain.slot, Infinity);
  }
  setStand(day, chain, chain.downCauses > 0 ? STANDS_DOWN : STANDS_PAUSE);
}

/** One cause less; with the last one the step goes on, or the chain tries to move if its step is due. */
export function resumeChain(day: DayState, chain: ChainState): void {
  if (chain.downCauses > 0) return;
  if (chain.pauses > 0) {
    setStand(day, chain, STANDS_PAUSE);
    return;
  }
  setStand(day, chain, MOVES);
  if (chain.isDue) {
    wakeChain(day, chain);
    return;
  }
  day.path?.chainGoesOn(day, chain);
  day.calendar.schedule(chain.slot, day.now + chain.left);
}

/** The chain looks again, when the event is over, whether it can move. */
export function wakeChain(day: DayState, chain: ChainState): void {
  if (!chain.isDue) return;
  chain.looksAgain = true;
  day.mustSettle = true;
}

function cell({ shift, places }: ChainState, place: number): number {
  const at = place - shift;
  return at < 0 ? at + places : at;
}
