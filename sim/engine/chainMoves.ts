import { setState } from "./accounting.ts";
import { bringShackles, chainStage, headAt, setStand, turnRing } from "./chainRing.ts";
import { type DayState, MOVES, NONE, STANDS_UNFINISHED, STANDS_UNLOADING, WORKING } from "./dayState.ts";
import { admit, enterWindows, leaveUnfinished, unloadChain } from "./flow.ts";
import { vesselIsFull } from "./gates.ts";

/** Chains run from the day's start on. */
export function startChains(day: DayState): void {
  const { chains } = day;
  for (let chain = 0; chain < chains.count; chain++) {
    setState(day, chainStage(day, chain).positions[0]!, WORKING);
    day.calendar.schedule(chains.slot[chain]!, chains.secondsPerShackle[chain]!);
  }
}

/** The chain has come one shackle further: its next step is due. */
export function endChainStep(day: DayState, chain: number): void {
  day.chainDue[chain] = 1;
  tryMoveChain(day, chain);
  // Withdrawn only where the chain did not move and set its next step: that saves one walk up the tree.
  if (day.chainDue[chain]) day.calendar.schedule(day.chains.slot[chain]!, Infinity);
}

/**
 * Moves the chain by one shackle if nothing holds it: no station down, no planned pause, no head at the end of a window
 * that stops the chain for it, and the head at the unloading point taken off.
 */
export function tryMoveChain(day: DayState, chain: number): void {
  if (!day.chainDue[chain] || day.chainStops[chain]! > 0 || day.chainPauses[chain]! > 0) return;
  // A finished head at the unloading point is taken off even while a window holds the chain.
  const unloaded = !lastIsHeld(day, chain) && isUnloaded(day, chain);
  if (holdsUnfinished(day, chain)) {
    setStand(day, chain, STANDS_UNFINISHED);
    return;
  }
  if (!unloaded) {
    setStand(day, chain, STANDS_UNLOADING);
    return;
  }
  day.path?.moves(day, chain, day.stand[chain] === STANDS_UNFINISHED);
  setStand(day, chain, MOVES);
  step(day, chain);
}

function holdsUnfinished(day: DayState, chain: number): boolean {
  for (let station = firstStation(day, chain); station <= lastStation(day, chain); station++) {
    if (day.chains.stops[station] && unfinishedAt(day, chain, station) !== NONE) return true;
  }
  return false;
}

/** True when the last window reaches to the unloading point and stops the chain for the head there. */
function lastIsHeld(day: DayState, chain: number): boolean {
  const station = lastStation(day, chain);
  if (station < firstStation(day, chain) || !day.chains.stops[station]) return false;
  const reachesEnd = day.chains.windowTo[station] === day.chains.places[chain];
  return reachesEnd && unfinishedAt(day, chain, station) !== NONE;
}

/** The head at the last place of the station's window, if the station has not finished it. */
function unfinishedAt(day: DayState, chain: number, station: number): number {
  const item = headAt(day, chain, day.chains.windowTo[station]! - 1);
  return item !== NONE && day.pool.doneAt[item] !== station ? item : NONE;
}

/** A chain that already waits in line for a place downstream keeps waiting. */
function isUnloaded(day: DayState, chain: number): boolean {
  const last = day.chains.places[chain]! - 1;
  if (headAt(day, chain, last) === NONE) return true;
  const stage = chainStage(day, chain);
  if (stage.positions[0]!.item === headAt(day, chain, last)) return false;
  if (vesselIsFull(day, stage)) return false;
  day.path?.turnTo(day, chain, headAt(day, chain, last));
  passLastWindow(day, chain);
  unloadChain(day, chain);
  return headAt(day, chain, last) === NONE;
}

/** A window that reaches to the unloading point ends there: what is not done by now stays undone. */
function passLastWindow(day: DayState, chain: number): void {
  const station = lastStation(day, chain);
  if (station < firstStation(day, chain) || day.chains.windowTo[station] !== day.chains.places[chain]) return;
  const item = unfinishedAt(day, chain, station);
  if (item !== NONE) leaveUnfinished(day, day.stageAt[station]!, item);
}

function step(day: DayState, chain: number): void {
  const { chains } = day.line;
  day.chainDue[chain] = 0;
  for (let station = lastStation(day, chain); station >= firstStation(day, chain); station--) {
    const item = unfinishedAt(day, chain, station);
    if (item !== NONE) leaveUnfinished(day, day.stageAt[station]!, item);
  }
  countShackle(day, chain);
  turnRing(day, chain);
  bringShackles(day, chain);
  for (let station = lastStation(day, chain); station >= firstStation(day, chain); station--) {
    if (chains.windowFrom[station] === 0) continue;
    day.path?.turnTo(day, chain, headAt(day, chain, chains.windowFrom[station]!));
    enterWindows(day, chain, chains.windowFrom[station]!);
  }
  if (chains.places[chain]! > 1) day.path?.turnTo(day, chain, headAt(day, chain, 1));
  day.calendar.schedule(chains.slot[chain]!, day.now + chains.secondsPerShackle[chain]!);
  admit(day, chainStage(day, chain));
}

/** A shackle leaves the loading point, with a head or as a gap; gaps count only between the first and the last head hung. */
function countShackle(day: DayState, chain: number): void {
  const isGap = headAt(day, chain, 0) === NONE;
  if (isGap) {
    day.passedSince[chain]!++;
    const waits = chainStage(day, chain).waiters.first !== null;
    if (waits && day.freeShackles[chain] === 0) day.missingSince[chain]!++;
    return;
  }
  const before = Number.isNaN(day.passedSince[chain]!) ? 0 : day.passedSince[chain]!;
  const missing = Number.isNaN(day.passedSince[chain]!) ? 0 : day.missingSince[chain]!;
  day.passed[chain]! += before + 1;
  day.gaps[chain]! += before;
  day.missing[chain]! += missing;
  day.passedSince[chain] = 0;
  day.missingSince[chain] = 0;
}

function firstStation(day: DayState, chain: number): number {
  return day.chains.stage[chain]! + 1;
}

function lastStation(day: DayState, chain: number): number {
  return day.chains.stage[chain]! + day.chains.stationCount[chain]!;
}
