import { CHAIN, DWELL, NO_LIMIT } from "../line/index.ts";
import { beginOwnTime, forgetOwnTime, keepLeftSums } from "./ownTime.ts";
import type { ChainState } from "./state/chainState.ts";
import { type CrewState, peopleHere } from "./state/crewState.ts";
import { BLOCKED, type DayState, DOWN, STARVED, WORKING } from "./state/dayState.ts";
import type { Headcount } from "./state/headcount.ts";
import type { Item } from "./state/item.ts";
import type { PositionState } from "./state/positionState.ts";
import type { StageState } from "./state/stageState.ts";

/** Books the time a position spent in its state and puts it into `state`. */
export function setState(day: DayState, position: PositionState, state: number): void {
  const old = position.state;
  if (old === state) return;
  if (position.stage.kind === CHAIN || isIdleChange(day, position, state)) keepLeftSums(position.stage);
  bookState(day, position);
  position.state = state;
  day.active?.machineTurns(position.index, state === WORKING || state === DOWN, day.now);
}

/** No head comes to the position, and none left the stage at this instant. Held back by a gate it is idle too, and blocked. */
function isIdleChange(day: DayState, { item, stage }: PositionState, state: number): boolean {
  return item === null && state !== WORKING && stage.own.left !== day.now;
}

export function bookState(day: DayState, position: PositionState): void {
  const { state, stateSince } = position;
  position.stateSeconds[state]! += day.now - stateSince;
  if (state === DOWN) bookRepair(day, position);
  position.stateSince = day.now;
  if (day.recorders !== null) day.recorders.states[position.stage.index]!.add(state, stateSince, day.now);
}

/** Whoever has work in hand at a machine that is down stays with it. */
function bookRepair(day: DayState, { crew, item, done, stage, stateSince }: PositionState): void {
  if (crew === null || item === null || done) return;
  crew.repairSeconds[crew.stations.indexOf(stage)]! += stage.people * (day.now - stateSince);
}

/** Books the time a stage's queue had its length and notes the new one. */
export function noteQueue(day: DayState, stage: StageState, length: number): void {
  if (day.recorders !== null) traceQueue(day, stage, length);
  if (length > 0) beginOwnTime(day, stage);
  stage.shown.set(length, day.now);
}

function traceQueue(day: DayState, stage: StageState, length: number): void {
  traceEmptyPlaces(day, stage);
  day.recorders?.queues[stage.index]?.set(day.now, length);
}

export function bookQueue(day: DayState, stage: StageState): void {
  if (day.recorders !== null) traceEmptyPlaces(day, stage);
  stage.shown.book(day.now);
}

/** Empty places of a dwell stage starve; its taken ones are booked when their heads leave. */
function traceEmptyPlaces(day: DayState, { index, kind, places, shown }: StageState): void {
  if (kind !== DWELL || places === NO_LIMIT) return;
  day.recorders?.states[index]?.add(STARVED, shown.since, day.now, places - shown.heads);
}

/** Books a head's dwell so far, and its wait after it; called when it leaves, and at the day's end. */
export function bookDwell(day: DayState, stage: StageState, item: Item): void {
  const { stateSeconds } = stage.positions[0]!;
  const from = Math.max(item.entered, day.watchedFrom);
  const turn = Math.min(day.now, Math.max(from, item.ready));
  stateSeconds[WORKING]! += turn - from;
  stateSeconds[BLOCKED]! += day.now - turn;
  const recorder = day.recorders?.states[stage.index];
  recorder?.add(WORKING, from, turn);
  recorder?.add(BLOCKED, turn, day.now);
}

/** A head goes from one section to another, or off the line (-1). Within a section nothing changes. */
export function changeSection(day: DayState, from: number, to: number): void {
  if (from === to) return;
  noteSection(day, from, -1);
  if (to >= 0) noteSection(day, to, 1);
}

/** Adds heads to (or takes them from) a section. */
export function noteSection(day: DayState, section: number, change: number): void {
  const inside = day.inSection[section]!;
  inside.set(inside.heads + change, day.now);
  if (day.recorders !== null) day.recorders.sections[section]!.set(day.now, inside.heads);
}

/** Books a crew's busy and present person-seconds up to now; whoever finishes a head in hand is still present. */
export function bookCrew(day: DayState, crew: CrewState): void {
  const { busy, since } = crew;
  const seconds = day.now - since;
  const present = Math.max(busy, peopleHere(crew));
  crew.busySeconds += busy * seconds;
  crew.presentSeconds += present * seconds;
  if (day.recorders !== null) day.recorders.crew(crew.index, since, busy, present);
  crew.since = day.now;
}

/** The last entry in a crew's book: people stay for the last work on the line (or their own, where they leave by that), or for their own last job if that is later. */
export function closeCrew(day: DayState, crew: CrewState): void {
  if (crew.busy > 0) {
    bookCrew(day, crew);
    return;
  }
  const { index, since } = crew;
  const leaves = Number.isNaN(crew.leavesFrom) ? day.workFinish : Math.max(crew.leavesFrom, crew.lastWork);
  const seconds = Math.max(0, leaves - since);
  const present = peopleHere(crew);
  crew.presentSeconds += present * seconds;
  if (seconds > 0) day.recorders?.crew(index, since, 0, present);
  if (since + seconds < day.now) day.recorders?.crew(index, since + seconds, 0, 0);
}

/** Starts all time-weighted figures and counts afresh; what is present stays. */
export function forgetWarmUp(day: DayState): void {
  for (const position of day.positionAt) {
    bookState(day, position);
    position.stateSeconds.fill(0);
  }
  for (const stage of day.stageAt) forgetOwnTime(day, stage);
  for (const stage of day.stageAt) forgetStage(day, stage);
  for (const inside of day.inSection) forgetHeads(inside, day.now);
  // The most heads between the ends of a gate are those of the whole day.
  for (const inGate of day.headsInGate) inGate.restart(day.now);
  for (const crew of day.crewAt) {
    bookCrew(day, crew);
    crew.busySeconds = 0;
    crew.presentSeconds = 0;
    for (const people of [...crew.at, crew.atJobs]) if (people !== null) forgetHeads(people, day.now);
    crew.repairSeconds.fill(0);
  }
  for (const breakdown of day.breakdownAt) {
    breakdown.count = 0;
    breakdown.downSeconds = 0;
  }
  for (const chain of day.chainAt) forgetChain(chain, day.now);
  for (const column of [day.out, day.headsOverLimit]) column.fill(0);
  if (day.stunned !== null) {
    day.stunned.stunnedAgain = 0;
    day.stunned.stuckThere = 0;
  }
  for (const tally of [day.timeInSystem, ...day.limitTallies]) tally.reset();
  day.watchedFrom = day.now;
  day.active?.forget(day.now);
  day.killStops?.forget(day.now);
}

function forgetStage(day: DayState, stage: StageState): void {
  bookQueue(day, stage);
  forgetHeads(stage.shown, day.now);
  stage.processed = 0;
  stage.unworked = 0;
  stage.unfinished = 0;
  stage.diverted = 0;
  stage.breakdownCount = 0;
  stage.heldSeconds = 0;
  stage.heldSince = Number.NaN;
  stage.heatJoules = 0;
}

function forgetChain(chain: ChainState, now: number): void {
  chain.standSince = now;
  chain.standSeconds.fill(0);
  chain.passed = 0;
  chain.gaps = 0;
  chain.missing = 0;
}

function forgetHeads(count: Headcount, now: number): void {
  count.restart(now);
  count.most = count.heads;
}
