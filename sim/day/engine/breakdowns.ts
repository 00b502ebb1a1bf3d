import { setState } from "./accounting.ts";
import { interruptChain, resumeChain } from "./chainRing.ts";
import { explainIdle, release, startRun, startWaiting, stopRun, turnIdle } from "./flow.ts";
import { requestJob, startJob } from "./jobs.ts";
import { releaseFromJob, releaseHands } from "./people.ts";
import type { BreakdownState } from "./state/breakdownState.ts";
import type { ChainState } from "./state/chainState.ts";
import { BLOCKED, type DayState, DOWN, NOTHING, WORKING } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";

/** One of the position's own breakdowns strikes while it works. */
export function breakPosition(day: DayState, position: PositionState): void {
  const breakdown = position.ownBreakdown!;
  breakdown.isDown = true;
  stopRun(day, position, breakdown);
  standChainOf(day, position);
  position.downCauses++;
  setState(day, position, DOWN);
  position.stage.breakdownCount++;
  callRepair(day, breakdown, [position]);
  loseHead(day, position, breakdown);
}

/** An operator of the crew that repairs, who stands there with the head in hand, repairs it himself. */
function callRepair(day: DayState, { index, crew, headTo }: BreakdownState, working: PositionState[]): void {
  const own = crew >= 0 && headTo < 0 && working.some((position) => position.crew?.index === crew);
  if (own) startJob(day, index);
  else requestJob(day, index);
}

export function repairPosition(day: DayState, position: PositionState): void {
  const breakdown = position.ownBreakdown!;
  breakdown.isDown = false;
  breakdown.renew();
  position.announces = NOTHING;
  endDown(day, position);
  releaseFromJob(day, breakdown.index);
}

/** What has a slot of its own breaks, or is repaired. */
export function turnBreakdown(day: DayState, breakdown: BreakdownState): void {
  if (breakdown.isDown) repair(day, breakdown);
  else strike(day, breakdown);
}

function strike(day: DayState, breakdown: BreakdownState): void {
  const { stages, positions, chains } = breakdown;
  breakdown.isDown = true;
  breakdown.count++;
  breakdown.downSince = day.now;
  for (const stage of stages) stage.breakdownCount++;
  day.calendar.schedule(breakdown.slot, Infinity);
  const working: PositionState[] = [];
  for (const position of positions) {
    if (position.state === WORKING) working.push(position);
    beginDown(day, position);
  }
  for (const chain of chains) stopChain(day, chain);
  day.path?.breakdownStrikes(breakdown, working);
  callRepair(day, breakdown, working);
  // When all of them stand: what one loses no other may begin on in the same instant.
  for (const position of working) loseHead(day, position, breakdown);
}

/** An uptime that goes by running time starts counting with the first position that works again. */
function repair(day: DayState, breakdown: BreakdownState): void {
  const { slot, onRunningTime, positions, chains, index } = breakdown;
  breakdown.isDown = false;
  breakdown.downSeconds += day.now - Math.max(breakdown.downSince, day.watchedFrom);
  breakdown.renew();
  day.calendar.schedule(slot, onRunningTime ? Infinity : day.now + breakdown.uptimeLeft);
  for (const position of positions) endDown(day, position);
  for (const chain of chains) startChain(day, chain);
  releaseFromJob(day, index);
}

/** The head in hand is taken off unfinished when the breakdown says so; else its work is resumed after the repair. */
function loseHead(day: DayState, position: PositionState, { headTo }: BreakdownState): void {
  const { stage, item } = position;
  if (headTo < 0 || item === null) return;
  item.sendTo = headTo;
  stage.unfinished++;
  releaseHands(day, position);
  release(day, position);
}

/** Calendar clocks run from the day's start on. */
export function startCalendarClocks(day: DayState): void {
  for (const { slot, onRunningTime, uptimeLeft } of day.breakdownAt) {
    if (slot >= 0 && !onRunningTime) day.calendar.schedule(slot, uptimeLeft);
  }
}

/** The position stands: work in hand is interrupted; a finished item may still move on; an idle position takes nothing. */
function beginDown(day: DayState, position: PositionState): void {
  standChainOf(day, position);
  if (position.downCauses++ > 0) return;
  if (position.state === WORKING) {
    day.path?.suspend(day, position);
    stopRun(day, position, null);
    day.calendar.schedule(position.slot, Infinity);
  } else if (position.item === null) position.stage.idle--;
  setState(day, position, DOWN);
  // Another idle position may be the one now that work is waiting for.
  if (position.item === null && position.stage.idle > 0) explainIdle(day, position.stage);
}

function endDown(day: DayState, position: PositionState): void {
  const { stage } = position;
  if (stage.chain !== null) startChain(day, stage.chain);
  if (--position.downCauses > 0) return;
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
function standChainOf(day: DayState, { stage }: PositionState): void {
  if (stage.chain !== null) stopChain(day, stage.chain);
}

function stopChain(day: DayState, chain: ChainState): void {
  chain.downCauses++;
  interruptChain(day, chain);
}

function startChain(day: DayState, chain: ChainState): void {
  chain.downCauses--;
  resumeChain(day, chain);
}
