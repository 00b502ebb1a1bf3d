import { setState } from "./accounting.ts";
import { interruptChain, resumeChain } from "./chainRing.ts";
import { BLOCKED, type DayState, DOWN, NONE, NOTHING, WORKING } from "./dayState.ts";
import { beginLeaving, dispatchCrew, endLeaving, release, startRun, startWaiting, stopRun, turnIdle } from "./flow.ts";
import { requestJob, startJob } from "./jobs.ts";
import { releasePeople } from "./people.ts";

/** One of the position's own failures strikes while it works. */
export function failPosition(day: DayState, position: number): void {
  const unit = day.failingUnit[position]!;
  const stage = day.positions.stage[position]!;
  stopRun(day, stage, position, unit);
  countStop(day, position);
  day.stoppages[position]!++;
  setState(day, position, DOWN);
  day.stops[stage]!++;
  callRepair(day, unit, [position]);
  loseHead(day, position, unit);
}

/** An operator of the crew that repairs, who stands there with the head in hand, repairs it himself. */
function callRepair(day: DayState, unit: number, working: number[]): void {
  const { crew, headTo } = day.failures;
  const own = crew[unit]! >= 0 && headTo[unit]! < 0 && working.some((position) => day.crewOf[position] === crew[unit]);
  day.ownRepair[unit] = own ? 1 : 0;
  if (own) startJob(day, unit);
  else requestJob(day, unit);
}

export function repairPosition(day: DayState, position: number): void {
  const unit = day.failingUnit[position]!;
  day.uptimeLeft[unit] = day.uptime[unit]!.draw();
  day.announces[position] = NOTHING;
  endStoppage(day, position);
  freeRepairer(day, unit);
}

/** A failure unit with a slot of its own breaks, or is repaired. */
export function turnFailureUnit(day: DayState, unit: number): void {
  if (day.unitDown[unit]) repairUnit(day, unit);
  else failUnit(day, unit);
}

function failUnit(day: DayState, unit: number): void {
  const { positionFrom, positionTo, stage, slot } = day.failures;
  day.unitDown[unit] = 1;
  day.stops[stage[unit]!]!++;
  day.calendar.schedule(slot[unit]!, Infinity);
  const working: number[] = [];
  for (let position = positionFrom[unit]!; position < positionTo[unit]!; position++) {
    if (day.state[position] === WORKING) working.push(position);
    beginStoppage(day, position);
  }
  day.path?.unitFails(unit, working);
  callRepair(day, unit, working);
  // When all of them stand: what one loses no other may begin on in the same instant.
  for (const position of working) loseHead(day, position, unit);
}

/** A unit on running time starts counting with the first position that works again. */
function repairUnit(day: DayState, unit: number): void {
  const { positionFrom, positionTo, slot, onRunningTime } = day.failures;
  day.unitDown[unit] = 0;
  day.uptimeLeft[unit] = day.uptime[unit]!.draw();
  day.calendar.schedule(slot[unit]!, onRunningTime[unit] ? Infinity : day.now + day.uptimeLeft[unit]!);
  for (let position = positionFrom[unit]!; position < positionTo[unit]!; position++) endStoppage(day, position);
  freeRepairer(day, unit);
}

function freeRepairer(day: DayState, unit: number): void {
  const crew = day.failures.crew[unit]!;
  if (crew < 0 || day.ownRepair[unit]) return;
  releasePeople(day, crew, 1);
  dispatchCrew(day, crew);
}

/** The head in hand is taken off unfinished when the failure says so; else its work is resumed after the repair. */
function loseHead(day: DayState, position: number, unit: number): void {
  const to = day.failures.headTo[unit]!;
  const item = day.item[position]!;
  if (to < 0 || item === NONE) return;
  const stage = day.positions.stage[position]!;
  day.pool.sendTo[item] = to;
  day.unfinished[stage]!++;
  const crew = day.crewOf[position]!;
  beginLeaving(day, crew);
  release(day, stage, position);
  endLeaving(day, crew, stage);
}

/** Calendar clocks run from the day's start on. */
export function startCalendarClocks(day: DayState): void {
  const { failures } = day.line;
  for (let unit = failures.ownCount; unit < failures.count; unit++) {
    if (!failures.onRunningTime[unit]) day.calendar.schedule(failures.slot[unit]!, day.uptimeLeft[unit]!);
  }
}

/** The position stands: work in hand is interrupted; a finished item may still move on; an idle position takes nothing. */
function beginStoppage(day: DayState, position: number): void {
  countStop(day, position);
  if (day.stoppages[position]!++ > 0) return;
  const stage = day.positions.stage[position]!;
  if (day.state[position] === WORKING) {
    day.path?.suspend(day, position);
    stopRun(day, stage, position, NONE);
    day.calendar.schedule(day.slots.ofPosition[position]!, Infinity);
  } else if (day.item[position] === NONE) day.idle[stage]!--;
  setState(day, position, DOWN);
}

function endStoppage(day: DayState, position: number): void {
  const stage = day.positions.stage[position]!;
  const chain = day.stages.chain[stage]!;
  if (chain >= 0) {
    day.chainStops[chain]!--;
    resumeChain(day, chain);
  }
  if (--day.stoppages[position]! > 0) return;
  if (day.item[position] === NONE) {
    turnIdle(day, stage, position);
    startWaiting(day, stage);
  } else if (day.done[position]) setState(day, position, BLOCKED);
  else {
    day.path?.resume(day, position);
    startRun(day, stage, position);
  }
}

/** The whole chain stands when any station on it is down. */
function countStop(day: DayState, position: number): void {
  const chain = day.stages.chain[day.positions.stage[position]!]!;
  if (chain < 0) return;
  day.chainStops[chain]!++;
  interruptChain(day, chain);
}
