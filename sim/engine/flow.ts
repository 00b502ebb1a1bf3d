import { CHAIN, CHAIN_STATION, DWELL, HANGING_POINT, LORRY, OUT } from "../line/index.ts";
import { CREW_RULES } from "../plan/plan.ts";
import { bookDwell, changeSection, crewIsAway, noteQueue, setState } from "./accounting.ts";
import { canHangOn, hangOn, headAt, noteChainActive, takeOff, wakeChain } from "./chainRing.ts";
import { cratesBack, noteUnloaded } from "./crates.ts";
import {
  BLOCKED,
  type DayState,
  NO_CREW,
  NONE,
  NOTHING,
  ON_BREAK,
  POSITION_FAILS,
  STARVED,
  WORK_ENDS,
  WORKING,
} from "./dayState.ts";
import { enterGates, isHeld, vesselIsFull } from "./gates.ts";
import { claimHead, supplyHasHead } from "./hanging.ts";
import { DIVERTED, UNFINISHED } from "./itemPool.ts";
import { startJobs } from "./jobs.ts";
import { leaveLine, noMoreHeads } from "./leaveLine.ts";
import { claimForStage, crewFor, everyCrew, NOBODY, releaseFromStage } from "./people.ts";
import { takeProducts } from "./products.ts";
import { firstOwnFailure, spendOwnUptime, startStationClocks, stopStationClocks } from "./uptime.ts";
import { END, ENTRY, EXIT, passGates, passPoint, START } from "./watchLimits.ts";

/*
 * The movement of heads and crates: the one cascade behind every event. Longer than other files because its functions
 * call each other in a ring: work ends -> the item moves on -> its place frees -> whoever was blocked for the place moves
 * -> that position starts its next item -> ...
 *
 * A stage has `places` (buffer + positions; dwell: places; chain: the shackle at its loading point). An item takes a place
 * when it leaves the stage before, so a travelling item holds its place already. An item at an idle position that waits
 * for a person or a repair stands there. What only opens a gate or wakes a chain is left to settle.ts, after the event.
 */

/** A position's work is over. */
export function endWork(day: DayState, position: number): void {
  const { stages, positions } = day.line;
  const stage = positions.stage[position]!;
  const crew = day.crewOf[position]!;
  stopRun(day, stage, position, NONE);
  if (isHeadStage(day, stage)) finishHead(day, stage, day.item[position]!);
  else day.processed[stage]! += 1 + day.held.length[position]!;
  beginLeaving(day, crew);
  if (stages.kind[stage] === CHAIN_STATION) leaveWindowStation(day, stage, position);
  else release(day, stage, position);
  endLeaving(day, crew, stage);
}

/**
 * Brackets whatever follows when a crew's work at a stage is over, before its people are free. Crewed stations wait until
 * they are: the crew's rule decides where people go, not the order in which places happened to free, and relief is not
 * called for work that the crew itself is about to take. Without a crew (NONE) nothing waits.
 */
export function beginLeaving(day: DayState, crew: number): void {
  if (crew >= 0) day.defers = DEFER_CREWED;
}

/** People are free again: jobs first, then stations by the crew's rule, then whatever waited. */
export function endLeaving(day: DayState, crew: number, stage: number): void {
  if (crew < 0) return;
  day.defers = DEFER_NONE;
  releaseFromStage(day, crew, stage);
  dispatchCrew(day, crew);
  startDeferred(day);
}

/** Which stations put off starting until the cascade under way is over. */
const DEFER_NONE = 0;
const DEFER_CREWED = 1;
const DEFER_ALL = 2;

function startDeferred(day: DayState): void {
  for (let row = 0; row < day.deferredCount; row++) startWaiting(day, day.deferred[row]!);
  day.deferredCount = 0;
}

function defer(day: DayState, stage: number): void {
  for (let row = 0; row < day.deferredCount; row++) if (day.deferred[row] === stage) return;
  day.deferred[day.deferredCount++] = stage;
}

function finishHead(day: DayState, stage: number, item: number): void {
  passPoint(day, item, stage, END);
  day.workFinish = day.now;
  if (day.path && noMoreHeads(day)) day.path.workEnds();
  // Sent elsewhere before its work began: too light or too heavy for the machine.
  if (day.pool.sendTo[item] !== NONE) return;
  day.processed[stage]!++;
  takeProducts(day, stage, item);
}

/** The head rides on; the position takes the next one in its window. */
function leaveWindowStation(day: DayState, stage: number, position: number): void {
  const item = day.item[position]!;
  day.pool.doneAt[item] = stage;
  passPoint(day, item, stage, EXIT);
  emptyPosition(day, stage, position);
  startWaiting(day, stage);
  wakeChain(day, day.stages.chain[stage]!);
}

/** The first head of a dwell stage has dwelt long enough. */
export function endDwell(day: DayState, position: number): void {
  const stage = day.positions.stage[position]!;
  const item = day.queue.first[stage]!;
  day.calendar.schedule(day.slots.ofPosition[position]!, Infinity);
  // The vessel that its blood or drip runs into is full: turnVessel.ts calls again.
  if (vesselIsFull(day, stage)) {
    day.done[position] = 1;
    return;
  }
  passPoint(day, item, stage, END);
  day.processed[stage]!++;
  takeProducts(day, stage, item);
  release(day, stage, position);
}

/** The first item on its way out of `stage` reaches the next one. */
export function endTravel(day: DayState, stage: number): void {
  const item = day.travelling.shift(stage);
  const next = day.travelling.length[stage]! > 0 ? day.pool.ready[day.travelling.first[stage]!]! : Infinity;
  day.calendar.schedule(day.slots.ofTravel[stage]!, next);
  arrive(day, day.pool.sendTo[item]!, item);
}

/**
 * What is finished leaves the position, one item after another, as long as there is somewhere to go; an item without a
 * place blocks the position.
 */
export function release(day: DayState, stage: number, position: number): void {
  if (day.stages.perCycle[stage] === 1) {
    releaseItem(day, stage, position);
    refill(day, stage);
    return;
  }
  // Crates that come off together are there together when the next step looks for its batch.
  const before = day.defers;
  day.defers = DEFER_ALL;
  while (releaseItem(day, stage, position) && day.item[position] !== NONE);
  refill(day, stage);
  day.defers = before;
  if (before === DEFER_NONE) startDeferred(day);
}

/** False when the item has no place to go and blocks the position. */
function releaseItem(day: DayState, stage: number, position: number): boolean {
  const item = itemOf(day, stage, position);
  const to = routeOf(day, stage, item);
  if (isQueuedFor(day, to) || !takePlace(day, to)) {
    waitForPlace(day, position, to);
    return false;
  }
  vacate(day, stage, position, item);
  deliver(day, stage, to, item);
  return true;
}

/** Heads that wait to be hung onto a chain are not overtaken. */
function isQueuedFor(day: DayState, to: number): boolean {
  return to >= 0 && day.stages.kind[to] === CHAIN && day.waiterFirst[to] !== NONE;
}

function itemOf(day: DayState, stage: number, position: number): number {
  return day.stages.kind[stage] === DWELL ? day.queue.first[stage]! : day.item[position]!;
}

/**
 * Where the item goes: a stage, OUT, HANGING_POINT or LORRY. A head that leaves the line has its destination written
 * down. Dead heads are taken off where they are hung; one draw decides among removals, diversions and going on.
 */
function routeOf(day: DayState, stage: number, item: number): number {
  const { hanging, next, branchTo } = day.stages;
  if (stage === hanging && day.pool.destination[item] !== NONE) return OUT;
  const branch = day.branch[stage];
  const row = branch ? branchRow(day, stage, branch.next()) : NONE;
  // Sent elsewhere unworked or unfinished: nothing was decided on it here, but its draw is taken to keep others in step.
  const sent = day.pool.sendTo[item]!;
  if (sent !== NONE) return sent;
  if (row === NONE) return next[stage]!;
  const to = branchTo[row]!;
  if (to < 0) return divert(day, stage, item, -1 - to);
  day.pool.destination[item] = to;
  return OUT;
}

/** The removal or diversion that the draw falls on, or NONE. */
function branchRow(day: DayState, stage: number, u: number): number {
  const { branchFrom, branchShare } = day.stages;
  for (let row = branchFrom[stage]!; row < branchFrom[stage + 1]!; row++) if (u < branchShare[row]!) return row;
  return NONE;
}

/** A head that was sent once goes on the next time. */
function divert(day: DayState, stage: number, item: number, to: number): number {
  if (day.pool.flags[item]! & DIVERTED) return day.stages.next[stage]!;
  day.pool.flags[item]! |= DIVERTED;
  day.diverted[stage]!++;
  return to;
}

function takePlace(day: DayState, stage: number): boolean {
  if (stage === OUT || stage === LORRY) return true;
  if (stage === HANGING_POINT) return takeHangingPlace(day);
  const { kind, chain } = day.stages;
  if (kind[stage] === CHAIN) {
    if (!canHangOn(day, chain[stage]!)) return false;
  } else if (isFull(day, stage)) return false;
  day.occupancy[stage]!++;
  day.cameIn[stage]!++;
  return true;
}

function isFull(day: DayState, stage: number): boolean {
  const { places, headsPerHook } = day.stages;
  if (headsPerHook[stage]! > 1) return !hookHasPlace(day, stage);
  return day.occupancy[stage]! >= places[stage]!;
}

/** Hooks fill one after another; a hook is free again when its last head has left. */
function hookHasPlace(day: DayState, stage: number): boolean {
  const { places, headsPerHook } = day.stages;
  const heads = headsPerHook[stage]!;
  const inUse = Math.floor(day.cameIn[stage]! / heads) - Math.floor(day.wentOut[stage]! / heads);
  return inUse < Math.floor(places[stage]! / heads);
}

function takeHangingPlace(day: DayState): boolean {
  const { supply } = day.line;
  return supply.kind === "loads" && day.atHanging.length[0]! < supply.cratesAtHanging;
}

/** `position` positions.count stands for the hanging point with its empty crate. */
function waitForPlace(day: DayState, position: number, to: number): void {
  const list = to === HANGING_POINT ? day.stages.count : to;
  day.waiterNext[position] = NONE;
  if (day.waiterFirst[list] === NONE) day.waiterFirst[list] = position;
  else day.waiterNext[day.waiterLast[list]!] = position;
  day.waiterLast[list] = position;
  if (day.active !== null) noteActive(day, to);
  if (position === day.positions.count) return;
  const stage = day.positions.stage[position]!;
  const kind = day.stages.kind[stage];
  if (kind === DWELL) day.active?.turn(position, false, day.now);
  if (kind === DWELL || kind === CHAIN) return;
  day.done[position] = 1;
  if (day.stoppages[position] === 0) setState(day, position, BLOCKED);
}

/** Who waits for a place, and which places are taken, tells whether a chain or a dwell stage is active. */
function noteActive(day: DayState, stage: number): void {
  if (stage < 0) return;
  const { kind, chain, positionFrom } = day.stages;
  if (kind[stage] === CHAIN) noteChainActive(day, chain[stage]!);
  if (kind[stage] !== DWELL) return;
  const firstDwells = day.queue.length[stage]! > 0 && day.pool.ready[day.queue.first[stage]!]! > day.now;
  day.active?.turn(positionFrom[stage]!, firstDwells && isFull(day, stage), day.now);
}

/** The item leaves its position and stage; the position may take the next one. */
function vacate(day: DayState, stage: number, position: number, item: number): void {
  const kind = day.stages.kind[stage];
  if (isHeadStage(day, stage)) passPoint(day, item, stage, EXIT);
  day.occupancy[stage]!--;
  day.wentOut[stage]!++;
  if (kind === DWELL) leaveDwell(day, stage, item);
  else if (kind === CHAIN) {
    day.item[position] = NONE;
    takeOff(day, day.stages.chain[stage]!);
  } else emptyPosition(day, stage, position);
}

function emptyPosition(day: DayState, stage: number, position: number): void {
  if (day.stages.perCycle[stage]! > 1 && day.held.length[position]! > 0) {
    day.item[position] = day.held.shift(position);
    return;
  }
  day.item[position] = NONE;
  day.done[position] = 0;
  if (day.stoppages[position]! > 0) return;
  if (day.idle[stage] === 0) day.path?.freed(stage);
  turnIdle(day, stage, position);
}

/** A position has nothing in hand any more, and no stoppage. */
export function turnIdle(day: DayState, stage: number, position: number): void {
  const others = day.idle[stage]!++;
  if (others === 0) day.idleState[stage] = STARVED;
  else if (day.idleState[stage] !== STARVED) day.idleState[stage] = NONE;
  if (position < day.idleFrom[stage]!) day.idleFrom[stage] = position;
  setState(day, position, STARVED);
}

/** The place there is taken: the item goes out, onto a lorry, or to the stage, at once or after its travel. */
function deliver(day: DayState, stage: number, to: number, item: number): void {
  const { section } = day.stages;
  if (isHeadStage(day, stage)) changeSection(day, section[stage]!, to === OUT ? NONE : section[to]!);
  if (to === OUT) {
    leaveLine(day, item, Math.max(day.pool.destination[item]!, 0));
    return;
  }
  if (to === LORRY) {
    cratesBack(day, item);
    return;
  }
  if (!isHeadStage(day, stage)) noteUnloaded(day, stage, item);
  const travel = day.travel[stage];
  if (!travel) {
    arrive(day, to, item);
    return;
  }
  const free = day.now + travel.draw();
  const arrival = Math.max(day.lastArrival[stage]!, free);
  day.path?.travels(stage, item, arrival > free);
  day.lastArrival[stage] = arrival;
  day.pool.ready[item] = arrival;
  day.pool.sendTo[item] = to;
  day.travelling.push(stage, item);
  if (day.travelling.length[stage] === 1) day.calendar.schedule(day.slots.ofTravel[stage]!, arrival);
}

/** An item joins a stage where a place is reserved for it. */
export function arrive(day: DayState, stage: number, item: number): void {
  day.pool.sendTo[item] = NONE;
  if (stage === HANGING_POINT) {
    arriveAtHanging(day, item);
    return;
  }
  if (isHeadStage(day, stage)) passPoint(day, item, stage, ENTRY);
  const kind = day.stages.kind[stage];
  if (kind === CHAIN) {
    arriveOnChain(day, stage, item);
    return;
  }
  day.queue.push(stage, item);
  if (kind === DWELL) enterDwell(day, stage, item);
  else {
    noteQueue(day, stage, day.queue.length[stage]!);
    startWaiting(day, stage);
  }
}

function arriveAtHanging(day: DayState, crate: number): void {
  day.atHanging.push(0, crate);
  const { hanging } = day.stages;
  noteQueue(day, hanging, day.queueShown[hanging]! + day.pool.number[crate]!);
  startWaiting(day, hanging);
}

function arriveOnChain(day: DayState, stage: number, item: number): void {
  const chain = day.stages.chain[stage]!;
  passPoint(day, item, stage, START);
  day.pool.doneAt[item] = NONE;
  hangOn(day, chain, item);
  day.path?.hung(day, item);
  enterWindows(day, chain, 0);
}

/** The head at this place of the chain comes into the window that begins there. */
export function enterWindows(day: DayState, chain: number, place: number): void {
  const item = headAt(day, chain, place);
  if (item === NONE) return;
  const { stage, stationCount, windowFrom } = day.chains;
  const first = stage[chain]! + 1;
  for (let station = first; station < first + stationCount[chain]!; station++) {
    if (windowFrom[station] !== place) continue;
    passPoint(day, item, station, ENTRY);
    day.queue.push(station, item);
    noteQueue(day, station, day.queue.length[station]!);
    startWaiting(day, station);
  }
}

/** The head at the last place of a window leaves it without being finished there. */
export function leaveUnfinished(day: DayState, station: number, item: number): void {
  day.pool.flags[item]! |= UNFINISHED;
  day.unfinished[station]!++;
  passGates(day, item, station, END);
  passPoint(day, item, station, EXIT);
  if (day.queue.length[station]! > 0 && day.queue.first[station] === item) {
    day.queue.shift(station);
    noteQueue(day, station, day.queue.length[station]!);
    return;
  }
  let position = day.stages.positionFrom[station]!;
  while (day.item[position] !== item) position++;
  const crew = day.crewOf[position]!;
  stopRun(day, station, position, NONE);
  day.calendar.schedule(day.slots.ofPosition[position]!, Infinity);
  beginLeaving(day, crew);
  emptyPosition(day, station, position);
  startWaiting(day, station);
  endLeaving(day, crew, station);
}

/** The head at the unloading point is taken off if there is a place for it; else the chain waits in line for one. */
export function unloadChain(day: DayState, chain: number): void {
  const { stage, places, unfinishedTo } = day.chains;
  const item = headAt(day, chain, places[chain]! - 1);
  const isUnfinished = (day.pool.flags[item]! & UNFINISHED) !== 0 && unfinishedTo[chain]! >= 0;
  if (isUnfinished) {
    day.pool.flags[item]! &= ~UNFINISHED;
    day.pool.sendTo[item] = unfinishedTo[chain]!;
  }
  const position = day.stages.positionFrom[stage[chain]!]!;
  day.item[position] = item;
  day.processed[stage[chain]!]!++;
  passPoint(day, item, stage[chain]!, END);
  takeProducts(day, stage[chain]!, item);
  release(day, stage[chain]!, position);
}

function enterDwell(day: DayState, stage: number, item: number): void {
  noteQueue(day, stage, day.queue.length[stage]!);
  passPoint(day, item, stage, START);
  day.pool.entered[item] = day.now;
  day.pool.ready[item] = day.now + dwellOf(day, stage, item);
  day.path?.dwells(stage, item);
  if (day.queue.length[stage] === 1) scheduleDwell(day, stage);
  if (day.active !== null) noteActive(day, stage);
}

/** Drawn, or read off the chilling curve for the head's weight; the heat that goes is booked with it. */
function dwellOf(day: DayState, stage: number, item: number): number {
  const curve = day.stages.chilling[stage];
  if (!curve) return day.work[stage]!.draw();
  const { weightsKg, seconds, joules } = curve;
  const step = weightsKg[1]! - weightsKg[0]!;
  const last = weightsKg.length - 2;
  const at = (day.pool.weight[item]! - weightsKg[0]!) / step;
  const row = Math.min(Math.max(Math.floor(at), 0), last);
  const within = Math.min(Math.max(at - row, 0), 1);
  day.heatJoules[stage]! += joules[row]! + within * (joules[row + 1]! - joules[row]!);
  return seconds[row]! + within * (seconds[row + 1]! - seconds[row]!);
}

export function scheduleDwell(day: DayState, stage: number): void {
  const ready = day.queue.length[stage]! > 0 ? day.pool.ready[day.queue.first[stage]!]! : Infinity;
  const first = Math.max(day.now, ready);
  day.path?.dwellsNext(stage, ready < first);
  day.calendar.schedule(day.slots.ofPosition[day.stages.positionFrom[stage]!]!, first);
}

/** Books the head's dwell and the wait after it, and turns to the next head. */
function leaveDwell(day: DayState, stage: number, item: number): void {
  day.queue.shift(stage);
  noteQueue(day, stage, day.queue.length[stage]!);
  bookDwell(day, stage, item);
  scheduleDwell(day, stage);
  if (day.active !== null) noteActive(day, stage);
}

/** Something left the stage: its positions take what waits, then whoever is blocked for a place there gets it. */
export function refill(day: DayState, stage: number): void {
  const kind = day.stages.kind[stage];
  if (kind !== DWELL && kind !== CHAIN) startWaiting(day, stage);
  admit(day, stage);
}

/** Whoever is blocked for a place in the stage gets it, in the order of blocking, as far as there are places. */
export function admit(day: DayState, stage: number): void {
  while (day.waiterFirst[stage] !== NONE && takePlace(day, stage)) moveFirstWaiter(day, stage, stage);
}

function admitCrates(day: DayState): void {
  const list = day.stages.count;
  while (day.waiterFirst[list] !== NONE && takeHangingPlace(day)) moveFirstWaiter(day, list, HANGING_POINT);
}

function moveFirstWaiter(day: DayState, list: number, to: number): void {
  const position = day.waiterFirst[list]!;
  day.waiterFirst[list] = day.waiterNext[position]!;
  if (day.active !== null) noteActive(day, to);
  if (position === day.positions.count) {
    passEmptyCrate(day, to);
    return;
  }
  const from = day.positions.stage[position]!;
  const item = itemOf(day, from, position);
  vacate(day, from, position, item);
  deliver(day, from, to, item);
  if (day.stages.perCycle[from]! > 1 && day.item[position] !== NONE) release(day, from, position);
  else refill(day, from);
  if (day.stages.kind[from] === CHAIN) wakeChain(day, day.stages.chain[from]!);
}

/** The crate at the hanging point is empty: it goes to the washer when there is a place, and the next one comes. */
function emptyCrate(day: DayState): void {
  const { supply } = day.line;
  if (supply.kind !== "loads") return;
  if (supply.firstBack < 0) {
    day.pool.give(day.atHanging.shift(0));
    admitCrates(day);
  } else if (takePlace(day, supply.firstBack)) passEmptyCrate(day, supply.firstBack);
  else waitForPlace(day, day.positions.count, supply.firstBack);
}

function passEmptyCrate(day: DayState, to: number): void {
  const crate = day.atHanging.shift(0);
  day.emptyCrates++;
  arrive(day, to, crate);
  admitCrates(day);
  startWaiting(day, day.stages.hanging);
}

/** Idle positions of the stage begin whatever waits, as far as they may; then the idle ones say why they are. */
export function startWaiting(day: DayState, stage: number): void {
  if (day.defers === DEFER_ALL || (day.defers === DEFER_CREWED && day.stages.people[stage]! > 0)) {
    defer(day, stage);
    return;
  }
  while (day.idle[stage]! > 0 && hasWork(day, stage) && isOpen(day, stage)) {
    const crew = crewFor(day, stage);
    if (crew === NOBODY) break;
    startNext(day, stage, crew);
  }
  if (day.idle[stage]! > 0) explainIdle(day, stage);
  else if (day.path && hasWork(day, stage)) day.path.waits(day, stage);
}

function hasWork(day: DayState, stage: number): boolean {
  if (day.hangingClosed && stage === day.stages.hanging) return false;
  return day.queue.length[stage]! > 0 || (stage === day.stages.hanging && supplyHasHead(day));
}

/** Nothing but people or a machine can keep the stage from beginning what waits. */
function isOpen(day: DayState, stage: number): boolean {
  return day.pauses[stage] === 0 && !isHeld(day, stage);
}

/** An idle position of the stage begins, with the crew that `crewFor` names. */
function startNext(day: DayState, stage: number, crew: number): void {
  const { perCycle } = day.stages;
  const crateIsEmpty = day.queue.length[stage] === 0 && claimHead(day);
  const item = day.queue.shift(stage);
  const position = firstIdle(day, stage);
  const walking = crew >= 0 ? claimForStage(day, crew, stage) : 0;
  day.crewOf[position] = crew;
  day.idle[stage]!--;
  day.item[position] = item;
  for (let more = 1; more < perCycle[stage]! && day.queue.length[stage]! > 0; more++) {
    day.held.push(position, day.queue.shift(stage));
  }
  noteQueueLeft(day, stage);
  noteHold(day, stage, false);
  day.remaining[position] = walking + workOn(day, stage, item);
  if (isHeadStage(day, stage)) {
    passPoint(day, item, stage, START);
    enterGates(day, stage, item);
  }
  day.path?.start(day, stage, position, walking);
  startRun(day, stage, position);
  if (crateIsEmpty) emptyCrate(day);
}

/** One draw per head even when it passes unworked, so that another setting keeps every other head's time. */
function workOn(day: DayState, stage: number, item: number): number {
  const { weightPerKg, weightAt, weightFrom, weightTo, weightElse } = day.stages;
  const drawn = day.work[stage]!.draw();
  const weight = day.pool.weight[item]!;
  if (weightElse[stage]! >= 0 && (weight < weightFrom[stage]! || weight > weightTo[stage]!)) {
    day.pool.sendTo[item] = weightElse[stage]!;
    day.unworked[stage]!++;
    return 0;
  }
  if (weightPerKg[stage] === 0) return drawn;
  return drawn * Math.max(0.1, 1 + weightPerKg[stage]! * (weight - weightAt[stage]!));
}

/** Heads that wait for hanging stand in crates: the queue shown there is theirs. */
function noteQueueLeft(day: DayState, stage: number): void {
  if (stage === day.stages.hanging && day.line.supply.kind === "loads") {
    noteQueue(day, stage, day.queueShown[stage]! - 1);
  } else noteQueue(day, stage, day.queue.length[stage]!);
}

function firstIdle(day: DayState, stage: number): number {
  let position = day.idleFrom[stage]!;
  while (day.item[position] !== NONE || day.stoppages[position]! > 0) position++;
  day.idleFrom[stage] = position;
  return position;
}

/** The position works (again) on the item in hand, until it is done or one of its own failures strikes. */
export function startRun(day: DayState, stage: number, position: number): void {
  setState(day, position, WORKING);
  day.runStart[position] = day.now;
  const slot = day.slots.ofPosition[position]!;
  const unit = firstOwnFailure(day, position);
  if (unit >= 0 && day.uptimeLeft[unit]! < day.remaining[position]!) {
    day.announces[position] = POSITION_FAILS;
    day.failingUnit[position] = unit;
    day.calendar.schedule(slot, day.now + day.uptimeLeft[unit]!);
  } else {
    day.announces[position] = WORK_ENDS;
    day.calendar.schedule(slot, day.now + day.remaining[position]!);
  }
  startStationClocks(day, stage);
}

/** The position stops working, done or not; what is left of the work is remembered. The caller sees to its slot. */
export function stopRun(day: DayState, stage: number, position: number, failing: number): void {
  day.remaining[position]! -= day.now - day.runStart[position]!;
  spendOwnUptime(day, position, failing);
  day.announces[position] = NOTHING;
  stopStationClocks(day, stage);
}

/** Free people take jobs, then go where work waits, by the crew's rule, until there is no more to begin. */
export function dispatchCrew(day: DayState, crew: number): void {
  startJobs(day, crew);
  for (;;) {
    const stage = chooseStation(day, crew);
    if (stage === NONE) return;
    startNext(day, stage, crewFor(day, stage));
    if (day.idle[stage]! > 0) explainIdle(day, stage);
  }
}

const LONGEST_QUEUE = CREW_RULES.indexOf("longest queue");
const FIXED_ORDER = CREW_RULES.indexOf("fixed order");

/** Ties of the longest queue go to the station further downstream. */
function chooseStation(day: DayState, crew: number): number {
  const { stationFrom, stations, rule } = day.crews;
  let chosen = NONE;
  for (let row = stationFrom[crew]!; row < stationFrom[crew + 1]!; row++) {
    const stage = stations[row]!;
    if (day.idle[stage] === 0 || !hasWork(day, stage) || !isOpen(day, stage)) continue;
    if (crewFor(day, stage) === NOBODY) continue;
    if (rule[crew] === FIXED_ORDER) return stage;
    if (chosen === NONE || rule[crew] !== LONGEST_QUEUE || day.queueShown[stage]! >= day.queueShown[chosen]!) {
      chosen = stage;
    }
  }
  return chosen;
}

/** Puts every idle position of the stage into the state that says why it idles. */
export function explainIdle(day: DayState, stage: number): void {
  const reason = idleReason(day, stage);
  day.path?.explain(stage, reason, hasWork(day, stage));
  noteHold(day, stage, reason === BLOCKED);
  if (day.idleState[stage] === reason) return;
  day.idleState[stage] = reason;
  const to = day.stages.positionFrom[stage + 1]!;
  for (let position = day.stages.positionFrom[stage]!; position < to; position++) {
    if (day.item[position] === NONE && day.stoppages[position] === 0) setState(day, position, reason);
  }
}

function idleReason(day: DayState, stage: number): number {
  if (day.pauses[stage]! > 0 || everyCrew(day, stage, crewIsAway)) return ON_BREAK;
  if (stage === day.stages.hanging && day.hangingClosed) return ON_BREAK;
  if (!hasWork(day, stage)) return STARVED;
  return isHeld(day, stage) ? BLOCKED : NO_CREW;
}

/** Books the time in which waiting heads are held back. */
function noteHold(day: DayState, stage: number, held: boolean): void {
  if (held === !Number.isNaN(day.heldSince[stage]!)) return;
  if (!held) day.heldSeconds[stage]! += day.now - day.heldSince[stage]!;
  day.heldSince[stage] = held ? day.now : Number.NaN;
}

/** Crates pass the stages before hanging; heads the others. */
export function isHeadStage(day: DayState, stage: number): boolean {
  return stage >= day.stages.hanging;
}
