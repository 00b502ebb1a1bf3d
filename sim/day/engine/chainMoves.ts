import { setState } from "./accounting.ts";
import { bringShackles, headAt, headAtUnloading, setStand, turnRing } from "./chainRing.ts";
import { admit, enterWindow, leaveUnfinished, unloadChain } from "./flow.ts";
import { vesselIsFull } from "./gates.ts";
import type { ChainState } from "./state/chainState.ts";
import { type DayState, MOVES, STANDS_UNFINISHED, STANDS_UNLOADING, WORKING } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";
import { startClocks } from "./uptime.ts";

/** Chains run from the day's start on. */
export function startChains(day: DayState): void {
  for (const chain of day.chainAt) {
    setState(day, chain.wayOut, WORKING);
    day.calendar.schedule(chain.slot, chain.secondsPerShackle);
    if (chain.stage.clocks.length > 0) startClocks(day, chain.stage);
  }
}

/** The chain has come one shackle further: its next step is due. */
export function endChainStep(day: DayState, chain: ChainState): void {
  chain.isDue = true;
  tryMoveChain(day, chain);
  // Withdrawn only where the chain did not move and set its next step: that saves one walk up the tree.
  if (chain.isDue) day.calendar.schedule(chain.slot, Infinity);
}

/**
 * Moves the chain by one shackle if nothing holds it: no station down, no planned pause, no head at the end of a window
 * that stops the chain for it, and the head at the unloading point taken off.
 */
export function tryMoveChain(day: DayState, chain: ChainState): void {
  if (!chain.isDue || chain.downCauses > 0 || chain.pauses > 0) return;
  // A finished head at the unloading point is taken off even while a window holds the chain.
  const unloaded = !lastIsHeld(chain) && isUnloaded(day, chain);
  if (holdsUnfinished(chain)) {
    setStand(day, chain, STANDS_UNFINISHED);
    return;
  }
  if (!unloaded) {
    setStand(day, chain, STANDS_UNLOADING);
    return;
  }
  day.path?.moves(day, chain, chain.stand === STANDS_UNFINISHED);
  setStand(day, chain, MOVES);
  step(day, chain);
}

function holdsUnfinished(chain: ChainState): boolean {
  const { stations } = chain;
  for (let rank = 0; rank < stations.length; rank++) {
    if (stations[rank]!.stopsChain && unfinishedAt(chain, stations[rank]!) !== null) return true;
  }
  return false;
}

/** True when the last window reaches to the unloading point and stops the chain for the head there. */
function lastIsHeld(chain: ChainState): boolean {
  const { lastStation } = chain;
  return lastStation?.stopsChain === true && unfinishedAt(chain, lastStation) !== null;
}

/** The head at the last place of the station's window, if the station has not finished it. */
function unfinishedAt(chain: ChainState, { index, windowTo }: StageState): Item | null {
  const item = headAt(chain, windowTo - 1);
  return item !== null && item.doneAt !== index ? item : null;
}

/** A chain that already waits in line for a place downstream keeps waiting. */
function isUnloaded(day: DayState, chain: ChainState): boolean {
  const item = headAtUnloading(chain);
  if (item === null) return true;
  if (chain.wayOut.item === item || vesselIsFull(chain.stage)) return false;
  day.path?.turnTo(day, chain, item);
  // A window that reaches to the unloading point ends there: what is not done by now stays undone.
  if (chain.lastStation !== null) leaveIfUnfinished(day, chain, chain.lastStation);
  unloadChain(day, chain, item);
  return headAtUnloading(chain) === null;
}

function leaveIfUnfinished(day: DayState, chain: ChainState, station: StageState): void {
  const item = unfinishedAt(chain, station);
  if (item !== null) leaveUnfinished(day, station, item);
}

/** The stations in turn from the last one on: whoever leaves a window makes room for who comes into it. */
function step(day: DayState, chain: ChainState): void {
  const { stations, places } = chain;
  chain.isDue = false;
  for (let rank = stations.length - 1; rank >= 0; rank--) leaveIfUnfinished(day, chain, stations[rank]!);
  countShackle(chain);
  turnRing(chain);
  bringShackles(chain, day.now);
  for (let rank = stations.length - 1; rank >= 0; rank--) {
    const station = stations[rank]!;
    if (station.windowFrom > 0) comeInto(day, chain, station);
  }
  if (places > 1) day.path?.turnTo(day, chain, headAt(chain, 1));
  day.calendar.schedule(chain.slot, day.now + chain.secondsPerShackle);
  admit(day, chain.stage);
}

/** The head that has come to the first place of the station's window. */
function comeInto(day: DayState, chain: ChainState, station: StageState): void {
  const item = headAt(chain, station.windowFrom);
  day.path?.turnTo(day, chain, item);
  if (item !== null) enterWindow(day, station, item);
}

/** A shackle leaves the loading point, with a head or as a gap; gaps count only between the first and the last head hung. */
function countShackle(chain: ChainState): void {
  if (headAt(chain, 0) === null) {
    chain.passedSince++;
    if (chain.stage.waiters.first !== null && chain.freeShackles === 0) chain.missingSince++;
    return;
  }
  const isFirst = Number.isNaN(chain.passedSince);
  chain.passed += isFirst ? 1 : chain.passedSince + 1;
  chain.gaps += isFirst ? 0 : chain.passedSince;
  chain.missing += isFirst ? 0 : chain.missingSince;
  chain.passedSince = 0;
  chain.missingSince = 0;
}
