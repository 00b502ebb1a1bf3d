import { DWELL, HANGING_POINT, OUT } from "../line/index.ts";
import { CREW_RULES } from "../plan/plan.ts";
import { bookCrew, crewIsAway, noteQueue, noteSection, peopleOnDuty, setState } from "./accounting.ts";
import { STATES } from "./dayRecord.ts";
import {
  BLOCKED,
  type DayState,
  MOVE_ON,
  NO_CREW,
  NONE,
  NOTHING,
  ON_BREAK,
  POSITION_FAILS,
  STARVED,
  WORK_ENDS,
  WORKING,
} from "./dayState.ts";
import { claimHead, noteUnloaded, supplyHasHead } from "./hanging.ts";
import { leaveLine } from "./leaveLine.ts";
import { firstOwnFailure, spendOwnUptime, startStationClocks, stopStationClocks } from "./uptime.ts";
import { END, ENTRY, EXIT, passPoint, START } from "./watchLimits.ts";

/*
 * The movement of heads and crates: the one cascade behind every event. Longer than other files because its functions
 * call each other in a ring: work ends -> the item moves on -> its place frees -> whoever was blocked for the place moves
 * -> that position starts its next item -> ...
 *
 * A stage has `places` (buffer + positions; dwell: places). An item takes a place when it leaves the stage before, so a
 * travelling item holds its place already. An item at an idle position that waits for a person or a repair stands there.
 */

/** A position's work is over. */
export function endWork(day: DayState, position: number): void {
  const stage = day.line.positions.stage[position]!;
  stopRun(day, position, NONE);
  day.processed[stage]!++;
  const item = day.item[position]!;
  if (isHeadStage(day, stage)) {
    passPoint(day, item, stage, END);
    day.workFinish = day.now;
  }
  release(day, position, item);
  const crew = day.line.stages.crew[stage]!;
  if (crew < 0) return;
  // Only now: the crew's rule decides where the person goes, not the order in which places happened to free.
  releasePeople(day, crew, day.line.stages.people[stage]!);
  dispatchCrew(day, crew);
}

/** The first head of a dwell stage has dwelt long enough. */
export function endDwell(day: DayState, position: number): void {
  const stage = day.line.positions.stage[position]!;
  const item = day.queue.first[stage]!;
  day.calendar.schedule(day.line.slots.ofPosition[position]!, Infinity);
  day.processed[stage]!++;
  passPoint(day, item, stage, END);
  release(day, position, item);
}

/** The first item on its way out of `stage` reaches the next one. */
export function endTravel(day: DayState, stage: number): void {
  const item = day.travelling.shift(stage);
  const next = day.travelling.length[stage]! > 0 ? day.pool.ready[day.travelling.first[stage]!]! : Infinity;
  day.calendar.schedule(day.line.slots.ofTravel[stage]!, next);
  arrive(day, day.line.stages.next[stage]!, item);
}

/** The item whose work is done leaves its position if there is somewhere to go; else it blocks the position. */
function release(day: DayState, position: number, item: number): void {
  const stage = day.line.positions.stage[position]!;
  const destination = removedTo(day, stage, item);
  const next = destination === NONE ? day.line.stages.next[stage]! : OUT;
  if (next === OUT) {
    vacate(day, position, item);
    leaveLine(day, item, Math.max(destination, 0));
    refill(day, stage);
  } else if (takePlace(day, next)) {
    vacate(day, position, item);
    send(day, stage, next, item);
    refill(day, stage);
  } else {
    waitForPlace(day, position, next);
    if (day.line.stages.kind[stage] !== DWELL) {
      day.announces[position] = MOVE_ON;
      setState(day, position, BLOCKED);
    }
  }
}

/** Where the head goes instead of onward, or NONE. Dead heads are taken off where they are hung. */
function removedTo(day: DayState, stage: number, item: number): number {
  if (stage === day.line.stages.hanging && day.pool.destination[item] !== NONE) return day.pool.destination[item]!;
  const draw = day.removal[stage];
  if (!draw) return NONE;
  const { removalFrom, removalShare, removalTo } = day.line.stages;
  const u = draw.next();
  for (let row = removalFrom[stage]!; row < removalFrom[stage + 1]!; row++) {
    if (u < removalShare[row]!) return removalTo[row]!;
  }
  return NONE;
}

function takePlace(day: DayState, stage: number): boolean {
  if (stage === HANGING_POINT) return takeHangingPlace(day);
  if (day.occupancy[stage]! >= day.line.stages.places[stage]!) return false;
  day.occupancy[stage]!++;
  return true;
}

function takeHangingPlace(day: DayState): boolean {
  const { supply } = day.line;
  return supply.kind === "loads" && day.atHanging.length[0]! < supply.cratesAtHanging;
}

function waitForPlace(day: DayState, position: number, next: number): void {
  const list = next === HANGING_POINT ? day.line.stages.count : next;
  day.waiterNext[position] = NONE;
  if (day.waiterFirst[list] === NONE) day.waiterFirst[list] = position;
  else day.waiterNext[day.waiterLast[list]!] = position;
  day.waiterLast[list] = position;
}

/** The item leaves its position and stage; the position may take the next one. */
function vacate(day: DayState, position: number, item: number): void {
  const stage = day.line.positions.stage[position]!;
  if (isHeadStage(day, stage)) {
    passPoint(day, item, stage, EXIT);
    noteSection(day, day.line.stages.section[stage]!, -1);
  }
  day.occupancy[stage]!--;
  if (day.line.stages.kind[stage] === DWELL) leaveDwell(day, stage, item);
  else {
    day.item[position] = NONE;
    day.announces[position] = NOTHING;
    if (day.stoppages[position]! > 0) return;
    day.idle[stage]!++;
    setState(day, position, STARVED);
  }
}

/** The place in the next stage is taken; the item gets there at once or after its travel. */
function send(day: DayState, stage: number, next: number, item: number): void {
  if (isHeadStage(day, stage)) noteSection(day, day.line.stages.section[next]!, 1);
  else noteUnloaded(day, stage, item);
  const travel = day.travel[stage];
  if (!travel) {
    arrive(day, next, item);
    return;
  }
  const arrival = Math.max(day.lastArrival[stage]!, day.now + travel.draw());
  day.lastArrival[stage] = arrival;
  day.pool.ready[item] = arrival;
  day.travelling.push(stage, item);
  if (day.travelling.length[stage] === 1) day.calendar.schedule(day.line.slots.ofTravel[stage]!, arrival);
}

/** An item joins a stage where a place is reserved for it. */
export function arrive(day: DayState, stage: number, item: number): void {
  if (stage === HANGING_POINT) {
    arriveAtHanging(day, item);
    return;
  }
  if (isHeadStage(day, stage)) passPoint(day, item, stage, ENTRY);
  day.queue.push(stage, item);
  if (day.line.stages.kind[stage] === DWELL) enterDwell(day, stage, item);
  else {
    noteQueue(day, stage, day.queue.length[stage]!);
    startWaiting(day, stage);
  }
}

function arriveAtHanging(day: DayState, crate: number): void {
  day.atHanging.push(0, crate);
  const { hanging } = day.line.stages;
  noteQueue(day, hanging, day.queueShown[hanging]! + day.pool.number[crate]!);
  startWaiting(day, hanging);
}

function enterDwell(day: DayState, stage: number, item: number): void {
  noteQueue(day, stage, day.queue.length[stage]!);
  passPoint(day, item, stage, START);
  day.pool.entered[item] = day.now;
  day.pool.ready[item] = day.now + day.work[stage]!.draw();
  if (day.queue.length[stage] === 1) scheduleDwell(day, stage);
}

function scheduleDwell(day: DayState, stage: number): void {
  const first = day.queue.length[stage]! > 0 ? Math.max(day.now, day.pool.ready[day.queue.first[stage]!]!) : Infinity;
  day.calendar.schedule(day.line.slots.ofPosition[day.line.stages.positionFrom[stage]!]!, first);
}

/** Books the head's dwell and the wait after it, and turns to the next head. */
function leaveDwell(day: DayState, stage: number, item: number): void {
  day.queue.shift(stage);
  noteQueue(day, stage, day.queue.length[stage]!);
  bookDwell(day, stage, day.pool.entered[item]!, day.pool.ready[item]!);
  scheduleDwell(day, stage);
}

function bookDwell(day: DayState, stage: number, entered: number, ready: number): void {
  const row = day.line.stages.positionFrom[stage]! * STATES.length;
  const from = Math.max(entered, day.watchedFrom);
  const turn = Math.max(from, ready);
  day.stateSeconds[row + WORKING]! += turn - from;
  day.stateSeconds[row + BLOCKED]! += day.now - turn;
  const recorder = day.recorders?.states[stage];
  recorder?.add(WORKING, from, turn);
  recorder?.add(BLOCKED, turn, day.now);
}

/** Something left the stage: its positions take what waits, then whoever is blocked for a place there gets it. */
export function refill(day: DayState, stage: number): void {
  if (day.line.stages.kind[stage] !== DWELL) startWaiting(day, stage);
  admit(day, stage);
}

function admit(day: DayState, stage: number): void {
  while (day.waiterFirst[stage] !== NONE && takePlace(day, stage)) moveFirstWaiter(day, stage, stage);
}

/** A crate left the hanging point. */
function admitCrates(day: DayState): void {
  const list = day.line.stages.count;
  while (day.waiterFirst[list] !== NONE && takeHangingPlace(day)) moveFirstWaiter(day, list, HANGING_POINT);
}

function moveFirstWaiter(day: DayState, list: number, to: number): void {
  const position = day.waiterFirst[list]!;
  day.waiterFirst[list] = day.waiterNext[position]!;
  const from = day.line.positions.stage[position]!;
  const item = day.line.stages.kind[from] === DWELL ? day.queue.first[from]! : day.item[position]!;
  vacate(day, position, item);
  send(day, from, to, item);
  refill(day, from);
}

/** Idle positions of the stage begin whatever waits, as far as there are people; then the idle ones say why they are. */
export function startWaiting(day: DayState, stage: number): void {
  while (day.idle[stage]! > 0 && hasWork(day, stage) && mayStart(day, stage)) startNext(day, stage);
  if (day.idle[stage]! > 0) explainIdle(day, stage);
}

function hasWork(day: DayState, stage: number): boolean {
  return day.queue.length[stage]! > 0 || (stage === day.line.stages.hanging && supplyHasHead(day));
}

function mayStart(day: DayState, stage: number): boolean {
  if (day.pauses[stage]! > 0) return false;
  const crew = day.line.stages.crew[stage]!;
  return crew < 0 || peopleOnDuty(day, crew) - day.busyPeople[crew]! >= day.line.stages.people[stage]!;
}

function startNext(day: DayState, stage: number): void {
  const emptied = day.queue.length[stage] === 0 && claimHead(day);
  const item = day.queue.shift(stage);
  noteQueueLeft(day, stage);
  const position = firstIdle(day, stage);
  const crew = day.line.stages.crew[stage]!;
  if (crew >= 0) {
    bookCrew(day, crew);
    day.busyPeople[crew]! += day.line.stages.people[stage]!;
  }
  day.idle[stage]!--;
  day.item[position] = item;
  day.remaining[position] = day.work[stage]!.draw();
  if (isHeadStage(day, stage)) passPoint(day, item, stage, START);
  startRun(day, position);
  if (emptied) admitCrates(day);
}

/** Heads that wait for hanging stand in crates: the queue shown there is theirs. */
function noteQueueLeft(day: DayState, stage: number): void {
  if (stage === day.line.stages.hanging && day.line.supply.kind === "loads") {
    noteQueue(day, stage, day.queueShown[stage]! - 1);
  } else noteQueue(day, stage, day.queue.length[stage]!);
}

function firstIdle(day: DayState, stage: number): number {
  let position = day.line.stages.positionFrom[stage]!;
  while (day.item[position] !== NONE || day.stoppages[position]! > 0) position++;
  return position;
}

/** The position works (again) on the item in hand, until it is done or one of its own failures strikes. */
export function startRun(day: DayState, position: number): void {
  setState(day, position, WORKING);
  day.runStart[position] = day.now;
  const slot = day.line.slots.ofPosition[position]!;
  const unit = firstOwnFailure(day, position);
  if (unit >= 0 && day.uptimeLeft[unit]! < day.remaining[position]!) {
    day.announces[position] = POSITION_FAILS;
    day.failingUnit[position] = unit;
    day.calendar.schedule(slot, day.now + day.uptimeLeft[unit]!);
  } else {
    day.announces[position] = WORK_ENDS;
    day.calendar.schedule(slot, day.now + day.remaining[position]!);
  }
  startStationClocks(day, day.line.positions.stage[position]!);
}

/** The position stops working, done or not; what is left of the work is remembered. The caller sees to its slot. */
export function stopRun(day: DayState, position: number, failing: number): void {
  day.remaining[position]! -= day.now - day.runStart[position]!;
  spendOwnUptime(day, position, failing);
  day.announces[position] = NOTHING;
  stopStationClocks(day, day.line.positions.stage[position]!);
}

function releasePeople(day: DayState, crew: number, people: number): void {
  bookCrew(day, crew);
  day.busyPeople[crew]! -= people;
}

/** Free people go where work waits, by the crew's rule, until there is no more to begin. */
export function dispatchCrew(day: DayState, crew: number): void {
  for (;;) {
    const stage = chooseStation(day, crew);
    if (stage === NONE) return;
    startNext(day, stage);
    if (day.idle[stage]! > 0) explainIdle(day, stage);
  }
}

const LONGEST_QUEUE = CREW_RULES.indexOf("longest queue");
const FIXED_ORDER = CREW_RULES.indexOf("fixed order");

/** Ties of the longest queue go to the station further downstream. */
function chooseStation(day: DayState, crew: number): number {
  const { stationFrom, stations, rule } = day.line.crews;
  let chosen = NONE;
  for (let row = stationFrom[crew]!; row < stationFrom[crew + 1]!; row++) {
    const stage = stations[row]!;
    if (day.idle[stage] === 0 || !hasWork(day, stage) || !mayStart(day, stage)) continue;
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
  const to = day.line.stages.positionFrom[stage + 1]!;
  for (let position = day.line.stages.positionFrom[stage]!; position < to; position++) {
    if (day.item[position] === NONE && day.stoppages[position] === 0) setState(day, position, reason);
  }
}

function idleReason(day: DayState, stage: number): number {
  const crew = day.line.stages.crew[stage]!;
  if (day.pauses[stage]! > 0 || (crew >= 0 && crewIsAway(day, crew))) return ON_BREAK;
  if (stage === day.line.stages.hanging && day.hangingClosed) return ON_BREAK;
  return hasWork(day, stage) ? NO_CREW : STARVED;
}

/** Crates pass the stages before hanging; heads the others. */
function isHeadStage(day: DayState, stage: number): boolean {
  return stage >= day.line.stages.hanging;
}
