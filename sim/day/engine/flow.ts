import { CHAIN, CHAIN_STATION, DWELL, HANGING_POINT, LORRY, OUT } from "../line/index.ts";
import { bookDwell, changeSection, noteQueue, setState } from "./accounting.ts";
import { branchOfHead } from "./branchShares.ts";
import { callPeople } from "./calls.ts";
import { canHangOn, hangOn, noteChainActive, takeOff, wakeChain } from "./chainRing.ts";
import { changeover } from "./changeover.ts";
import { cratesBack, noteUnloaded } from "./crates.ts";
import { enterGates, isHeld, vesselIsFull } from "./gates.ts";
import { claimHead, supplyHasHead } from "./hanging.ts";
import { checkFinished, leaveLine, noMoreHeads } from "./leaveLine.ts";
import { noteLeft } from "./ownTime.ts";
import { claimHands, isStaffAway, releaseHands } from "./people.ts";
import { takeProducts } from "./products.ts";
import type { BreakdownState } from "./state/breakdownState.ts";
import type { ChainState } from "./state/chainState.ts";
import type { CrewState } from "./state/crewState.ts";
import {
  BLOCKED,
  type DayState,
  NO_CREW,
  NONE,
  NOTHING,
  ON_BREAK,
  POSITION_BREAKS,
  STARVED,
  WORK_ENDS,
  WORKING,
} from "./state/dayState.ts";
import { DIVERTED, HELD, type Item, STUCK, UNDRAINED, UNFINISHED } from "./state/item.ts";
import type { LoadState } from "./state/loadState.ts";
import type { PositionState } from "./state/positionState.ts";
import { nextOut, type StageState } from "./state/stageState.ts";
import { noteStuck, noteStunned, stickingLeft } from "./stunned/late.ts";
import { firstOwnBreakdown, spendOwnUptime, startStationClocks, stopStationClocks } from "./uptime.ts";
import { END, ENTRY, EXIT, passGates, passPoint, START } from "./watchLimits.ts";

/*
 * The movement of heads and crates: the one cascade behind every event. Longer than other files because its functions
 * call each other in a ring: work ends -> the item moves on -> its place frees -> whoever was blocked for the place moves
 * -> that position starts its next item -> ...
 *
 * A stage has `places` (buffer + positions; dwell: places; chain: the shackle at its loading point). An item takes a place
 * when it leaves the stage before, so a travelling item holds its place already. An item at an idle position that waits
 * for a person or a repair stands there. What only opens a gate or wakes a chain is left to runDay.ts, after the event; who
 * goes where to dispatch.ts, when all that happens at the instant is over.
 */

/** A position's work is over: its people are free, and the head moves on if it can. */
export function endWork(day: DayState, position: PositionState): void {
  const { stage } = position;
  stopRun(day, position, null);
  releaseHands(day, position);
  if (stage.takesHeads) finishHead(day, stage, position.item!);
  else stage.processed += 1 + position.held.length;
  if (stage.kind === CHAIN_STATION) leaveWindowStation(day, position);
  else release(day, position);
}

function startDeferred(day: DayState): void {
  day.defersStarts = false;
  for (let row = 0; row < day.deferredCount; row++) startWaiting(day, day.deferred[row]!);
  day.deferredCount = 0;
}

function defer(day: DayState, stage: StageState): void {
  for (let row = 0; row < day.deferredCount; row++) if (day.deferred[row] === stage) return;
  day.deferred[day.deferredCount++] = stage;
}

function finishHead(day: DayState, stage: StageState, item: Item): void {
  passWork(day, item, stage, END);
  if (stage.stuns && item.sendTo === NONE) noteStunned(day, day.stunned!, item);
  day.workFinish = day.now;
  if (stage.isHanging) day.recorders?.hung.pass(day.now);
  if (day.path && noMoreHeads(day)) day.path.workEnds();
  // Sent elsewhere before its work began: too light or too heavy for the machine.
  if (item.sendTo !== NONE) return;
  stage.processed++;
  takeProducts(day, stage, item);
}

/** A head that was stuck where it waited passes its station unworked: gates see it there, limits saw its sticking. */
function passWork(day: DayState, item: Item, stage: StageState, moment: number): void {
  if (stage.sticks && (item.flags & STUCK) !== 0) passGates(day, item, stage, moment);
  else passPoint(day, item, stage, moment);
}

/** The head rides on; the position takes the next one in its window. */
function leaveWindowStation(day: DayState, position: PositionState): void {
  const { stage } = position;
  const item = position.item!;
  item.doneAt = stage.index;
  passPoint(day, item, stage, EXIT);
  noteLeft(day, stage);
  emptyPosition(day, position);
  startWaiting(day, stage);
  wakeChain(day, stage.chain!);
}

/** Some head of a dwell stage has dwelt long enough, or the first one, whose time was up before, may leave now. */
export function endDwell(day: DayState, position: PositionState): void {
  const { stage } = position;
  // In a stage that is closed for the day only times end; whoever's time was up before stays where it is.
  if (!mayLeave(position)) endDwellOf(day, stage);
  if (mayLeave(position)) leaveFirst(day, position);
  scheduleDwell(day, stage);
  if (day.active !== null) noteActive(day, stage.index);
}

/** The head's time is up, wherever it stands: what comes after is waiting. */
function endDwellOf(day: DayState, stage: StageState): void {
  const item = stage.ends.shift();
  item.doneAt = stage.index;
  if ((item.flags & HELD) !== 0) endHold(stage, item);
  passPoint(day, item, stage, END);
  stage.processed++;
  if (vesselIsFull(stage)) item.flags |= UNDRAINED;
  else takeProducts(day, stage, item);
}

/** Its lot is released. */
export function endHold(stage: StageState, item: Item): void {
  item.flags &= ~HELD;
  stage.heldHeads--;
}

/** The next head's time is up, and nothing was done about it yet. */
function firstIsDue({ stage, item }: PositionState): boolean {
  const next = nextOut(stage);
  return next !== null && next.doneAt === stage.index && next !== item;
}

function mayLeave(position: PositionState): boolean {
  return firstIsDue(position) && !position.stage.isClosed;
}

/** The first head leaves, unless the vessel that its blood or drip runs into is full: runDay.ts calls again. */
function leaveFirst(day: DayState, position: PositionState): void {
  position.item = nextOut(position.stage);
  if ((position.item!.flags & UNDRAINED) !== 0) position.done = true;
  else release(day, position);
}

/** A vessel was emptied: what is still on heads whose time is up runs into it, in their order, until it is full again. */
export function drainDwell(day: DayState, stage: StageState): void {
  const { queue } = stage;
  const wayOut = stage.positions[0]!;
  let item = queue.first;
  for (let rank = 0; rank < queue.length && !vesselIsFull(stage); rank++) {
    if ((item!.flags & UNDRAINED) !== 0) {
      item!.flags &= ~UNDRAINED;
      takeProducts(day, stage, item!);
    }
    item = item!.next;
  }
  if (!wayOut.done || (wayOut.item!.flags & UNDRAINED) !== 0) return;
  wayOut.done = false;
  if (stage.isClosed) {
    wayOut.item = null;
    return;
  }
  release(day, wayOut);
}

/** The first item on its way out of `stage` reaches the next one. */
export function endTravel(day: DayState, stage: StageState): void {
  const { travelling, travelSlot } = stage;
  const item = travelling.shift();
  const next = travelling.length > 0 ? travelling.first!.ready : Infinity;
  day.calendar.schedule(travelSlot, next);
  arrive(day, item.sendTo, item);
}

/**
 * What is finished leaves the position, one item after another, as long as there is somewhere to go; an item without a
 * place blocks the position.
 */
export function release(day: DayState, position: PositionState): void {
  const { stage } = position;
  if (stage.perCycle === 1) {
    releaseItem(day, position);
    refill(day, stage);
    return;
  }
  // Crates that come off together are there together when the next step looks for its batch.
  const isOutermost = !day.defersStarts;
  day.defersStarts = true;
  while (releaseItem(day, position) && position.item !== null);
  refill(day, stage);
  if (isOutermost) startDeferred(day);
}

/** False when the item has no place to go and blocks the position. */
function releaseItem(day: DayState, position: PositionState): boolean {
  const item = itemOf(position);
  const to = routeOf(day, position.stage, item);
  if (!takePlaceAfter(day, to)) {
    waitForPlace(day, position, to);
    return false;
  }
  vacate(day, position, item);
  deliver(day, position.stage, to, item);
  return true;
}

/** Heads that wait to be hung onto a chain are not overtaken. */
function isQueuedFor(stage: StageState): boolean {
  return stage.kind === CHAIN && stage.waiters.first !== null;
}

function itemOf({ stage, item }: PositionState): Item {
  return stage.kind === DWELL ? nextOut(stage)! : item!;
}

/**
 * Where the item goes: a stage, OUT, HANGING_POINT or LORRY. A head that leaves the line has its destination written
 * down. Dead heads are taken off where they are hung; one draw decides among removals, diversions and going on.
 */
function routeOf(day: DayState, stage: StageState, item: Item): number {
  if (stage.isHanging && item.destination !== NONE) return OUT;
  const row = stage.branch === null ? NONE : branchRow(day, stage, item, stage.branch.next());
  if (day.withdraws && isWithdrawn(day, stage, item)) return OUT;
  // Sent elsewhere unworked or unfinished: nothing was decided on it here, but its draw is taken to keep others in step.
  const sent = item.sendTo;
  if (sent !== NONE) return sent;
  if (row === NONE) return stage.next;
  const to = day.stages.branchTo[row]!;
  if (to < 0) return divert(stage, item, -1 - to);
  item.destination = to;
  return OUT;
}

/** Its whole load is withdrawn at this stage: the head leaves the line. */
function isWithdrawn(day: DayState, stage: StageState, item: Item): boolean {
  if (item.load === NONE) return false;
  const { withdrawnAt, withdrawnTo } = day.loadAt[item.load]!;
  if (withdrawnAt !== stage.index) return false;
  item.destination = withdrawnTo;
  return true;
}

/** The removal or diversion that the draw falls on, or NONE. */
function branchRow(day: DayState, stage: StageState, item: Item, u: number): number {
  if (stage.sharesVary) return branchOfHead(day, stage, item, u);
  const { branchShare } = day.stages;
  for (let row = stage.branchFrom; row < stage.branchTo; row++) if (u < branchShare[row]!) return row;
  return NONE;
}

/** A head that was sent once goes on the next time. */
function divert(stage: StageState, item: Item, to: number): number {
  if (item.flags & DIVERTED) return stage.next;
  item.flags |= DIVERTED;
  stage.diverted++;
  return to;
}

function takePlaceAfter(day: DayState, to: number): boolean {
  if (to === OUT || to === LORRY) return true;
  if (to === HANGING_POINT) return takeHangingPlace(day);
  const stage = day.stageAt[to]!;
  return !isQueuedFor(stage) && takePlace(stage);
}

function takePlace(stage: StageState): boolean {
  if (stage.kind === CHAIN) {
    if (!canHangOn(stage.chain!)) return false;
  } else if (isFull(stage)) return false;
  stage.occupancy++;
  stage.headsEntered++;
  return true;
}

function isFull(stage: StageState): boolean {
  if (stage.headsPerHook > 1) return !hookHasPlace(stage);
  return stage.occupancy >= stage.places;
}

/** Hooks fill one after another; a hook is free again when its last head has left. */
function hookHasPlace({ places, headsPerHook, headsEntered, headsLeft }: StageState): boolean {
  const inUse = Math.floor(headsEntered / headsPerHook) - Math.floor(headsLeft / headsPerHook);
  return inUse < Math.floor(places / headsPerHook);
}

function takeHangingPlace(day: DayState): boolean {
  const { supply } = day.line;
  return supply.kind === "loads" && day.atHanging.length < supply.cratesAtHanging;
}

function waitForPlace(day: DayState, position: PositionState, to: number): void {
  if (to === HANGING_POINT) day.hangingWaiters.push(position);
  else day.stageAt[to]!.waiters.push(position);
  if (day.active !== null) noteActive(day, to);
  if (position === day.emptyCrate) return;
  const { kind } = position.stage;
  if (kind === DWELL || kind === CHAIN) return;
  position.done = true;
  if (position.downCauses === 0) setState(day, position, BLOCKED);
}

/** Who waits for a place, and which places are taken, tells whether a chain or a dwell stage is active. */
function noteActive(day: DayState, to: number): void {
  if (to < 0) return;
  const stage = day.stageAt[to]!;
  if (stage.kind === CHAIN) noteChainActive(day, stage.chain!);
  if (stage.kind !== DWELL) return;
  const firstDwells = stage.queue.length > 0 && nextOut(stage)?.doneAt !== to;
  day.active?.turn(stage.positions[0]!.index, firstDwells && isFull(stage), day.now);
}

/** The item leaves its position and stage; the position may take the next one. */
function vacate(day: DayState, position: PositionState, item: Item): void {
  const { stage } = position;
  if (stage.takesHeads) passPoint(day, item, stage, EXIT);
  noteLeft(day, stage);
  stage.occupancy--;
  stage.headsLeft++;
  if (stage.kind === DWELL) leaveDwell(day, stage, item);
  else if (stage.kind === CHAIN) {
    position.item = null;
    takeOff(day, stage.chain!);
  } else emptyPosition(day, position);
}

function emptyPosition(day: DayState, position: PositionState): void {
  const { stage } = position;
  if (stage.perCycle > 1 && position.held.length > 0) {
    position.item = position.held.shift();
    return;
  }
  position.item = null;
  position.done = false;
  if (position.downCauses > 0) return;
  if (stage.idle === 0) day.path?.freed(stage.index);
  turnIdle(day, position);
}

/** A position has nothing in hand any more, and is not down. */
export function turnIdle(day: DayState, position: PositionState): void {
  const { stage } = position;
  if (stage.idle === 0) stage.idleState = STARVED;
  else if (stage.idleState !== STARVED) stage.idleState = NONE;
  stage.idle++;
  if (position.rank < stage.idleFrom) stage.idleFrom = position.rank;
  setState(day, position, STARVED);
}

/** The place there is taken: the item goes out, onto a lorry, or to the stage, at once or after its travel. */
function deliver(day: DayState, stage: StageState, to: number, item: Item): void {
  if (stage.takesHeads) changeSection(day, stage.section, to === OUT ? NONE : day.stageAt[to]!.section);
  if (to === OUT) {
    leaveLine(day, item, Math.max(item.destination, 0));
    return;
  }
  if (to === LORRY) {
    cratesBack(day, item);
    return;
  }
  if (!stage.takesHeads) noteUnloaded(day, stage, item);
  if (stage.travel === null) arrive(day, to, item);
  else sendOff(day, stage, stage.travel.draw(), to, item);
}

/** The item comes no earlier than whoever left before it. */
function sendOff(day: DayState, stage: StageState, seconds: number, to: number, item: Item): void {
  const free = day.now + seconds;
  const arrival = Math.max(stage.lastArrival, free);
  day.path?.travels(day, stage.index, item, arrival > free);
  stage.lastArrival = arrival;
  item.ready = arrival;
  item.sendTo = to;
  stage.travelling.push(item);
  if (stage.travelling.length === 1) day.calendar.schedule(stage.travelSlot, arrival);
}

/** An item joins a stage (or the hanging point) where a place is reserved for it. */
export function arrive(day: DayState, to: number, item: Item): void {
  item.sendTo = NONE;
  if (to === HANGING_POINT) {
    arriveAtHanging(day, item);
    return;
  }
  const stage = day.stageAt[to]!;
  if (stage.takesHeads) passPoint(day, item, stage, ENTRY);
  if (stage.kind === CHAIN) {
    arriveOnChain(day, stage.chain!, item);
    return;
  }
  stage.queue.push(item);
  if (stage.kind === DWELL) enterDwell(day, stage, item);
  else {
    noteQueue(day, stage, stage.queue.length);
    startWaiting(day, stage);
    if (!stage.takesHeads && day.options.goesOn === true) checkFinished(day);
  }
}

function arriveAtHanging(day: DayState, crate: Item): void {
  const { hanging } = day;
  day.atHanging.push(crate);
  noteQueue(day, hanging, hanging.shown.heads + crate.number);
  startWaiting(day, hanging);
}

function arriveOnChain(day: DayState, chain: ChainState, item: Item): void {
  passPoint(day, item, chain.stage, START);
  item.doneAt = NONE;
  hangOn(day, chain, item);
  day.path?.hung(day, item);
  for (const station of chain.stations) if (station.windowFrom === 0) enterWindow(day, station, item);
}

/** The head comes into the window of a station on the chain it hangs on. */
export function enterWindow(day: DayState, station: StageState, item: Item): void {
  passPoint(day, item, station, ENTRY);
  station.queue.push(item);
  noteQueue(day, station, station.queue.length);
  startWaiting(day, station);
}

/** The head at the last place of a window leaves it without being finished there. */
export function leaveUnfinished(day: DayState, station: StageState, item: Item): void {
  const { queue } = station;
  item.flags |= UNFINISHED;
  station.unfinished++;
  passGates(day, item, station, END);
  passPoint(day, item, station, EXIT);
  noteLeft(day, station);
  if (queue.length > 0 && queue.first === item) {
    queue.shift();
    noteQueue(day, station, queue.length);
    startWaiting(day, station);
    return;
  }
  const position = station.positions.find((each) => each.item === item)!;
  stopRun(day, position, null);
  day.calendar.schedule(position.slot, Infinity);
  releaseHands(day, position);
  emptyPosition(day, position);
  startWaiting(day, station);
}

/** The head at the unloading point is taken off if there is a place for it; else the chain waits in line for one. */
export function unloadChain(day: DayState, { stage, wayOut, unfinishedTo }: ChainState, item: Item): void {
  if ((item.flags & UNFINISHED) !== 0 && unfinishedTo >= 0) {
    item.flags &= ~UNFINISHED;
    item.sendTo = unfinishedTo;
  }
  wayOut.item = item;
  stage.processed++;
  passPoint(day, item, stage, END);
  takeProducts(day, stage, item);
  release(day, wayOut);
}

function enterDwell(day: DayState, stage: StageState, item: Item): void {
  noteQueue(day, stage, stage.queue.length);
  passPoint(day, item, stage, START);
  day.recorders?.entered[stage.index]?.pass(day.now);
  item.entered = day.now;
  item.ready = day.now + dwellOf(stage, item);
  if (item.load !== NONE) beginHold(stage, item, day.loadAt[item.load]!);
  item.doneAt = NONE;
  day.path?.dwells(stage.index, item);
  stage.ends.push(item);
  if (stage.ends.first === item) scheduleDwell(day, stage);
  if (day.active !== null) noteActive(day, stage.index);
  if (stage.isClosed) checkFinished(day);
}

/** A head of a lot that is held here is ready when that is released. */
function beginHold(stage: StageState, item: Item, { heldIn, heldUntil }: LoadState): void {
  if (heldIn !== stage.index || heldUntil <= item.ready) return;
  item.ready = heldUntil;
  item.flags |= HELD;
  stage.heldHeads++;
}

/** Drawn, or read off the chilling curve for the head's weight; the heat that goes is booked with it. */
export function dwellOf(stage: StageState, item: Item): number {
  if (stage.chilling === null) return stage.work.draw();
  const { weightsKg, seconds, joules } = stage.chilling;
  const step = weightsKg[1]! - weightsKg[0]!;
  const last = weightsKg.length - 2;
  const at = (item.weight - weightsKg[0]!) / step;
  const row = Math.min(Math.max(Math.floor(at), 0), last);
  const within = Math.min(Math.max(at - row, 0), 1);
  stage.heatJoules += joules[row]! + within * (joules[row + 1]! - joules[row]!);
  return seconds[row]! + within * (seconds[row + 1]! - seconds[row]!);
}

/** The day begins with heads that dwell here, or whose time was up in the night. */
export function beginDwelling(day: DayState, stage: StageState): void {
  if (mayLeave(stage.positions[0]!)) day.path?.leavesNext(stage.index);
  scheduleDwell(day, stage);
}

/** What comes next: the first head leaves whose time was up behind another one, or the next head's time is up. */
export function scheduleDwell(day: DayState, { ends, positions }: StageState): void {
  const wayOut = positions[0]!;
  const next = mayLeave(wayOut) ? day.now : ends.length > 0 ? ends.first.ready : Infinity;
  day.calendar.schedule(wayOut.slot, next);
}

/** Books the head's dwell and the wait after it, and turns to the next head. */
function leaveDwell(day: DayState, stage: StageState, item: Item): void {
  const wayOut = stage.positions[0]!;
  stage.queue.remove(item);
  wayOut.item = null;
  noteQueue(day, stage, stage.queue.length);
  bookDwell(day, stage, item);
  if (mayLeave(wayOut)) day.path?.leavesNext(stage.index);
  scheduleDwell(day, stage);
  if (day.active !== null) noteActive(day, stage.index);
}

/** Something left the stage: its positions take what waits, then whoever is blocked for a place there gets it. */
export function refill(day: DayState, stage: StageState): void {
  if (stage.kind !== DWELL && stage.kind !== CHAIN) startWaiting(day, stage);
  admit(day, stage);
}

/** Whoever is blocked for a place in the stage gets it, in the order of blocking, as far as there are places. */
export function admit(day: DayState, stage: StageState): void {
  while (stage.waiters.first !== null && takePlace(stage)) {
    moveWaiter(day, stage.waiters.shift(), stage.index);
  }
}

function admitCrates(day: DayState): void {
  const { hangingWaiters } = day;
  while (hangingWaiters.first !== null && takeHangingPlace(day)) {
    moveWaiter(day, hangingWaiters.shift(), HANGING_POINT);
  }
}

function moveWaiter(day: DayState, position: PositionState, to: number): void {
  if (day.active !== null) noteActive(day, to);
  if (position === day.emptyCrate) {
    passEmptyCrate(day, to);
    return;
  }
  const from = position.stage;
  const item = itemOf(position);
  vacate(day, position, item);
  deliver(day, from, to, item);
  if (from.perCycle > 1 && position.item !== null) release(day, position);
  else refill(day, from);
  if (from.kind === CHAIN) wakeChain(day, from.chain!);
}

/** The crate at the hanging point is empty: it goes to the washer when there is a place, and the next one comes. */
function emptyCrate(day: DayState): void {
  const { supply } = day.line;
  if (supply.kind !== "loads") return;
  if (supply.firstBack < 0) {
    day.pool.give(day.atHanging.shift());
    admitCrates(day);
  } else if (takePlace(day.stageAt[supply.firstBack]!)) passEmptyCrate(day, supply.firstBack);
  else waitForPlace(day, day.emptyCrate, supply.firstBack);
}

function passEmptyCrate(day: DayState, to: number): void {
  const crate = day.atHanging.shift();
  day.emptyCrates++;
  arrive(day, to, crate);
  admitCrates(day);
  startWaiting(day, day.hanging);
}

/**
 * Idle positions of the stage begin whatever waits, as far as they may; then the idle ones say why they are. Crewed stations
 * do so when the instant is over.
 */
export function startWaiting(day: DayState, stage: StageState): void {
  if (stage.isHeldForStunned && !day.stunned!.mayBegin) {
    day.stunned!.looks = true;
    day.path?.callsHold();
    return;
  }
  if (stage.people > 0) {
    callPeople(day, stage, day.path !== null && stage.idle > 0 && hasWork(day, stage) && isOpen(day, stage));
    return;
  }
  if (day.defersStarts) {
    defer(day, stage);
    return;
  }
  while (stage.idle > 0 && hasWork(day, stage) && isOpen(day, stage)) startNext(day, stage, null);
  if (stage.idle > 0) explainIdle(day, stage);
  else if (day.path && hasWork(day, stage)) day.path.waits(stage);
}

export function hasWork(day: DayState, stage: StageState): boolean {
  if (!stage.isHanging) return stage.queue.length > 0;
  return !day.hangingClosed && (stage.queue.length > 0 || supplyHasHead(day));
}

/** Nothing but people or a machine can keep the stage from beginning what waits. */
export function isOpen(day: DayState, stage: StageState): boolean {
  if (stage.isHeldForStunned && !day.stunned!.mayBegin) return false;
  return stage.pauses === 0 && !isHeld(day, stage);
}

/** An idle position of the stage begins, with people of that crew, or with none. */
export function startNext(day: DayState, stage: StageState, crew: CrewState | null): void {
  const { queue } = stage;
  const crateIsEmpty = queue.length === 0 && claimHead(day);
  const item = queue.shift();
  const position = firstIdle(stage);
  const walking = crew === null ? 0 : claimHands(day, crew, position);
  stage.idle--;
  position.item = item;
  for (let more = 1; more < stage.perCycle && queue.length > 0; more++) position.held.push(queue.shift());
  noteQueueLeft(day, stage);
  noteHold(day, stage, false);
  const seconds = workOn(day, stage, item);
  position.remaining = walking + (stage.pace === null ? seconds : pacedWork(day, stage, item, seconds));
  if (stage.changeoverSeconds > 0) position.remaining += changeover(day, position, item);
  if (stage.takesHeads) {
    passWork(day, item, stage, START);
    enterGates(day, stage, item);
  }
  if (stage.isHeldForStunned) day.stunned!.mayBegin = false;
  if (stage.sticks) noteStuck(day, item);
  day.path?.start(day, position, walking);
  startRun(day, position);
  if (crateIsEmpty) emptyCrate(day);
}

/** One draw per head even when it passes unworked, so that another setting keeps every other head's time. */
function workOn(day: DayState, stage: StageState, item: Item): number {
  const { weightPerKg, weightElse } = stage;
  const drawn = stage.work.draw();
  if (stage.sticks && (item.flags & STUCK) !== 0) return stickingLeft(day, stage, item);
  if (weightElse < 0 && weightPerKg === 0) return stage.learning === null ? drawn : stage.learning.secondsOf(drawn);
  const weight = item.weight;
  if (weightElse >= 0 && (weight < stage.weightFrom || weight > stage.weightTo)) {
    item.sendTo = weightElse;
    stage.unworked++;
    return 0;
  }
  const known = weightPerKg === 0 ? drawn : drawn * Math.max(0.1, 1 + weightPerKg * (weight - stage.weightAt));
  return stage.learning === null ? known : stage.learning.secondsOf(known);
}

/** As fast as the hour in which the head begins lets it; one that passes unworked takes no time at any hour. */
function pacedWork(day: DayState, { pace }: StageState, item: Item, seconds: number): number {
  return item.sendTo === NONE ? pace!.secondsFrom(day.now, seconds) : seconds;
}

/** Heads that wait for hanging stand in crates: the queue shown there is theirs. */
function noteQueueLeft(day: DayState, stage: StageState): void {
  const inCrates = stage.isHanging && day.line.supply.kind === "loads";
  noteQueue(day, stage, inCrates ? stage.shown.heads - 1 : stage.queue.length);
}

function firstIdle(stage: StageState): PositionState {
  const { positions } = stage;
  let rank = stage.idleFrom;
  while (positions[rank]!.item !== null || positions[rank]!.downCauses > 0) rank++;
  stage.idleFrom = rank;
  return positions[rank]!;
}

/** The position works (again) on the item in hand, until it is done or one of its own breakdowns strikes. */
export function startRun(day: DayState, position: PositionState): void {
  setState(day, position, WORKING);
  position.runStart = day.now;
  const breakdown = firstOwnBreakdown(position);
  if (breakdown !== null && breakdown.uptimeLeft < position.remaining) {
    position.announces = POSITION_BREAKS;
    position.ownBreakdown = breakdown;
    day.calendar.schedule(position.slot, day.now + breakdown.uptimeLeft);
  } else {
    position.announces = WORK_ENDS;
    day.calendar.schedule(position.slot, day.now + position.remaining);
  }
  startStationClocks(day, position.stage);
}

/** The position stops working, done or not; what is left of the work is remembered. The caller sees to its slot. */
export function stopRun(day: DayState, position: PositionState, striking: BreakdownState | null): void {
  position.remaining -= day.now - position.runStart;
  spendOwnUptime(day, position, striking);
  position.announces = NOTHING;
  stopStationClocks(day, position.stage);
}

/**
 * Puts every idle position of the stage into the state that says why it idles. Without people, or held back, are only as
 * many as there is work waiting for, the first ones; the others are starved.
 */
export function explainIdle(day: DayState, stage: StageState): void {
  const reason = idleReason(day, stage);
  day.path?.explain(stage.index, reason, hasWork(day, stage));
  noteHold(day, stage, reason === BLOCKED);
  const hasTask = reason === NO_CREW || reason === BLOCKED;
  const wanted = hasTask ? Math.min(stage.idle, wantedPositions(day, stage)) : stage.idle;
  const isSaid = !hasTask || (stage.idleWanted === wanted && stage.idleExplained === stage.idle);
  if (stage.idleState === reason && isSaid) return;
  stage.idleState = reason;
  stage.idleWanted = wanted;
  stage.idleExplained = stage.idle;
  let left = wanted;
  for (const position of stage.positions) {
    if (position.item === null && position.downCauses === 0) setState(day, position, left-- > 0 ? reason : STARVED);
  }
}

/** Positions that what waits would keep at work. */
function wantedPositions(day: DayState, { isHanging, shown, queue, perCycle }: StageState): number {
  if (!isHanging) return Math.ceil(queue.length / perCycle);
  return day.line.supply.kind === "saturated" ? Infinity : Math.max(queue.length, shown.heads);
}

function idleReason(day: DayState, stage: StageState): number {
  if (stage.pauses > 0 || isStaffAway(day, stage)) return ON_BREAK;
  if (stage.isHanging && day.hangingClosed) return ON_BREAK;
  if (!hasWork(day, stage)) return STARVED;
  return isHeld(day, stage) ? BLOCKED : NO_CREW;
}

/** Books the time in which waiting heads are held back. */
function noteHold(day: DayState, stage: StageState, held: boolean): void {
  if (held === !Number.isNaN(stage.heldSince)) return;
  if (!held) stage.heldSeconds += day.now - stage.heldSince;
  stage.heldSince = held ? day.now : Number.NaN;
}
