import { setState } from "./accounting.ts";
import { interruptChain, resumeChain } from "./chainRing.ts";
import { explainIdle, release, startRun, startWaiting, stopRun, turnIdle } from "./flow.ts";
import { requestJob, startJob } from "./jobs.ts";
import { releaseFromJob, releaseHands } from "./people.ts";
import type { ChainState } from "./state/chainState.ts";
import { BLOCKED, type DayState, DOWN, NONE, NOTHING, WORKING } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";
import { unitChains, unitPositions, unitStages } from "./unitPositions.ts";

/** One of the position's own failures strikes while it works. */
export function failPosition(day: DayState, position: PositionState): void {
  const unit = position.failingUnit;
  stopRun(day, position, unit);
  countStop(day, position);
  position.stoppages++;
  setState(day, position, DOWN);
  position.stage.stops++;
  callRepair(day, unit, [position]);
  loseHead(day, position, unit);
}

/** An operator of the crew that repairs, who stands there with the head in hand, repairs it himself. */
function callRepair(day: DayState, unit: number, working: PositionState[]): void {
  const { crew, headTo } = day.failures;
  const own = crew[unit]! >= 0 && headTo[unit]! < 0 && working.some((position) => position.crew?.index === crew[unit]);
  if (own) startJob(day, unit);
  else requestJob(day, unit);
}

export function repairPosition(day: DayState, position: PositionState): void {
  const unit = position.failingUnit;
  day.uptimeLeft[unit] = day.uptime[unit]!.draw();
  position.announces = NOTHING;
  endStoppage(day, position);
  releaseFromJob(day, unit);
}

/** A failure unit with a slot of its own breaks, or is repaired. */
export function turnFailureUnit(day: DayState, unit: number): void {
  if (day.unitDown[unit]) repairUnit(day, unit);
  else failUnit(day, unit);
}

function failUnit(day: DayState, unit: number): void {
  day.unitDown[unit] = 1;
  for (const stage of unitStages(day, unit)) stage.stops++;
  day.unitStops[unit]!++;
  day.unitDownSince[unit] = day.now;
  day.calendar.schedule(day.failures.slot[unit]!, Infinity);
  const working: PositionState[] = [];
  for (const position of unitPositions(day, unit)) {
    if (position.state === WORKING) working.push(position);
    beginStoppage(day, position);
  }
  const chains = unitChains(day, unit);
  for (const chain of chains) stopChain(day, chain);
  day.path?.unitFails(unit, working, chains);
  callRepair(day, unit, working);
  // When all of them stand: what one loses no other may begin on in the same instant.
  for (const position of working) loseHead(day, position, unit);
}

/** A unit on running time starts counting with the first position that works again. */
function repairUnit(day: DayState, unit: number): void {
  const { slot, onRunningTime } = day.failures;
  day.unitDown[unit] = 0;
  day.unitDownSeconds[unit]! += day.now - Math.max(day.unitDownSince[unit]!, day.watchedFrom);
  day.uptimeLeft[unit] = day.uptime[unit]!.draw();
  day.calendar.schedule(slot[unit]!, onRunningTime[unit] ? Infinity : day.now + day.uptimeLeft[unit]!);
  for (const position of unitPositions(day, unit)) endStoppage(day, position);
  for (const chain of unitChains(day, unit)) startChain(day, chain);
  releaseFromJob(day, unit);
}

/** The head in hand is taken off unfinished when the failure says so; else its work is resumed after the repair. */
function loseHead(day: DayState, position: PositionState, unit: number): void {
  const { stage, item } = position;
  const to = day.failures.headTo[unit]!;
  if (to < 0 || item === null) return;
  item.sendTo = to;
  stage.unfinished++;
  releaseHands(day, position);
  release(day, position);
}

/** Calendar clocks run from the day's start on. */
export function startCalendarClocks(day: DayState): void {
  const { failures } = day.line;
  for (let unit = failures.ownCount; unit < failures.count; unit++) {
    if (!failures.onRunningTime[unit]) day.calendar.schedule(failures.slot[unit]!, day.uptimeLeft[unit]!);
  }
}

/** The position stands: work in hand is interrupted; a finished item may still move on; an idle position takes nothing. */
function beginStoppage(day: DayState, position: PositionState): void {
  countStop(day, position);
  if (position.stoppages++ > 0) return;
  if (position.state === WORKING) {
    day.path?.suspend(day, position);
    stopRun(day, position, NONE);
    day.calendar.schedule(position.slot, Infinity);
  } else if (position.item === null) position.stage.idle--;
  setState(day, position, DOWN);
  // Another idle position may be the one now that work is waiting for.
  if (position.item === null && position.stage.idle > 0) explainIdle(day, position.stage);
}

function endStoppage(day: DayState, position: PositionState): void {
  const { stage } = position;
  if (stage.chain !== null) startChain(day, stage.chain);
  if (--position.stoppages > 0) return;
  if (position.item === null) {
    turnIdle(day, position);
    startWaiting(day, stage);
  } else if (position.done) setState(day, position, BLOCKED);
  else {
    day.path?.resume(day, position);
    startRun(day, position);
  }
}

/** The whole chain stands when any station on it is down. */
function countStop(day: DayState, { stage }: PositionState): void {
  if (stage.chain !== null) stopChain(day, stage.chain);
}

function stopChain(day: DayState, chain: ChainState): void {
  chain.stops++;
  interruptChain(day, chain);
}

function startChain(day: DayState, chain: ChainState): void {
  chain.stops--;
  resumeChain(day, chain);
}
