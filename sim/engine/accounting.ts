import { CREW_PEOPLE, DWELL, NO_LIMIT } from "../line/index.ts";
import { STATES } from "./dayRecord.ts";
import { BLOCKED, type DayState, DOWN, STARVED, WORKING } from "./dayState.ts";

const WIDTH = STATES.length;

/** Books the time a position spent in its state and puts it into `state`. */
export function setState(day: DayState, position: number, state: number): void {
  const old = day.state[position]!;
  if (old === state) return;
  bookState(day, position);
  day.state[position] = state;
  day.active?.machineTurns(position, state === WORKING || state === DOWN, day.now);
}

export function bookState(day: DayState, position: number): void {
  const since = day.stateSince[position]!;
  const state = day.state[position]!;
  day.stateSeconds[position * WIDTH + state]! += day.now - since;
  day.stateSince[position] = day.now;
  if (day.recorders !== null) day.recorders.states[day.positions.stage[position]!]!.add(state, since, day.now);
}

/** Books the time a stage's queue had its length and notes the new one. */
export function noteQueue(day: DayState, stage: number, length: number): void {
  bookQueue(day, stage);
  day.queueShown[stage] = length;
  if (length > day.queueMax[stage]!) day.queueMax[stage] = length;
  if (day.recorders !== null) day.recorders.queues[stage]!.set(day.now, length);
}

export function bookQueue(day: DayState, stage: number): void {
  if (day.recorders !== null) traceEmptyPlaces(day, stage);
  day.queueArea[stage]! += day.queueShown[stage]! * (day.now - day.queueSince[stage]!);
  day.queueSince[stage] = day.now;
}

/** Empty places of a dwell stage starve; its taken ones are booked when their heads leave. */
function traceEmptyPlaces(day: DayState, stage: number): void {
  const { kind, places } = day.stages;
  if (kind[stage] !== DWELL || places[stage] === NO_LIMIT) return;
  const empty = places[stage]! - day.queueShown[stage]!;
  day.recorders?.states[stage]?.add(STARVED, day.queueSince[stage]!, day.now, empty);
}

/** Books a head's dwell so far, and its wait after it; called when it leaves, and at the day's end. */
export function bookDwell(day: DayState, stage: number, item: number): void {
  const row = day.stages.positionFrom[stage]! * WIDTH;
  const from = Math.max(day.pool.entered[item]!, day.watchedFrom);
  const turn = Math.min(day.now, Math.max(from, day.pool.ready[item]!));
  day.stateSeconds[row + WORKING]! += turn - from;
  day.stateSeconds[row + BLOCKED]! += day.now - turn;
  const recorder = day.recorders?.states[stage];
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
  bookSection(day, section);
  const heads = day.sectionHeads[section]! + change;
  day.sectionHeads[section] = heads;
  if (heads > day.sectionMax[section]!) day.sectionMax[section] = heads;
  if (day.recorders !== null) day.recorders.sections[section]!.set(day.now, heads);
}

export function bookSection(day: DayState, section: number): void {
  day.sectionArea[section]! += day.sectionHeads[section]! * (day.now - day.sectionSince[section]!);
  day.sectionSince[section] = day.now;
}

/** Books a crew's busy and present person-seconds up to now; whoever finishes a head in hand is still present. */
export function bookCrew(day: DayState, crew: number): void {
  const seconds = day.now - day.crewSince[crew]!;
  const busy = day.busyPeople[crew]!;
  const present = Math.max(busy, peopleOnDuty(day, crew));
  day.busySeconds[crew]! += busy * seconds;
  day.presentSeconds[crew]! += present * seconds;
  if (day.recorders !== null) day.recorders.crew(crew, day.crewSince[crew]!, busy, present);
  day.crewSince[crew] = day.now;
}

/** The last entry in a crew's book: people stay for the last work on the line, or for their own last job if that is later. */
export function closeCrew(day: DayState, crew: number): void {
  const seconds = Math.max(0, day.workFinish - day.crewSince[crew]!);
  const busy = day.busyPeople[crew]!;
  if (busy > 0) {
    bookCrew(day, crew);
    return;
  }
  const left = day.crewSince[crew]! + seconds;
  day.presentSeconds[crew]! += peopleOnDuty(day, crew) * seconds;
  if (seconds > 0) day.recorders?.crew(crew, day.crewSince[crew]!, 0, peopleOnDuty(day, crew));
  if (left < day.now) day.recorders?.crew(crew, left, 0, 0);
}

/** People of the crew who may begin something now, those at work included. */
export function peopleOnDuty(day: DayState, crew: number): number {
  return day.breaks[crew]! > 0 ? 0 : day.people[crew]!;
}

/** True when nobody of the crew is on duty but someone will come back: a planned absence. */
export function crewIsAway(day: DayState, crew: number): boolean {
  if (day.breaks[crew]! > 0) return true;
  return day.people[crew] === 0 && moreShiftsFor(day, crew);
}

function moreShiftsFor(day: DayState, crew: number): boolean {
  const { calendar } = day.line;
  for (let row = day.calendarRow; row < calendar.count; row++) {
    if (calendar.action[row] === CREW_PEOPLE && calendar.target[row] === crew && calendar.amount[row]! > 0) return true;
  }
  return false;
}

/** Starts all time-weighted figures and counts afresh; what is present stays. */
export function forgetWarmUp(day: DayState): void {
  const { stages, positions, sectionNames, crews } = day.line;
  for (let position = 0; position < positions.count; position++) bookState(day, position);
  day.gateSince.fill(day.now);
  day.standSince.fill(day.now);
  for (const column of [day.gateArea, day.standSeconds, day.passed, day.gaps, day.missing, day.heldSeconds])
    column.fill(0);
  for (const column of [day.unworked, day.unfinished, day.diverted, day.heatJoules]) column.fill(0);
  day.heldSince.fill(Number.NaN);
  for (let stage = 0; stage < stages.count; stage++) bookQueue(day, stage);
  for (let section = 0; section < sectionNames.length; section++) bookSection(day, section);
  for (let crew = 0; crew < crews.count; crew++) bookCrew(day, crew);
  for (const column of [day.stateSeconds, day.queueArea, day.sectionArea, day.busySeconds, day.presentSeconds])
    column.fill(0);
  for (const column of [day.processed, day.stops, day.out, day.beyond]) column.fill(0);
  day.queueMax.set(day.queueShown);
  day.sectionMax.set(day.sectionHeads);
  for (const tally of [day.timeInSystem, ...day.limitTallies]) tally.reset();
  day.watchedFrom = day.now;
  day.active?.forget(day.now);
}
