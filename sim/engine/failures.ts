import { setState } from "./accounting.ts";
import {
  BLOCKED,
  type DayState,
  DOWN,
  MOVE_ON,
  NONE,
  NOTHING,
  POSITION_REPAIRED,
  STARVED,
  WORKING,
} from "./dayState.ts";
import { startRun, startWaiting, stopRun } from "./flow.ts";

/** One of the position's own failures strikes while it works. The work is resumed after the repair, with the time left. */
export function failPosition(day: DayState, position: number): void {
  const unit = day.failingUnit[position]!;
  stopRun(day, position, unit);
  day.stops[day.line.positions.stage[position]!]!++;
  day.stoppages[position]!++;
  setState(day, position, DOWN);
  day.announces[position] = POSITION_REPAIRED;
  day.calendar.schedule(day.line.slots.ofPosition[position]!, day.now + day.repair[unit]!.draw());
}

export function repairPosition(day: DayState, position: number): void {
  const unit = day.failingUnit[position]!;
  day.uptimeLeft[unit] = day.uptime[unit]!.draw();
  day.announces[position] = NOTHING;
  endStoppage(day, position);
}

/** A failure unit with a slot of its own breaks, or is repaired. */
export function turnFailureUnit(day: DayState, unit: number): void {
  if (day.unitDown[unit]) repairUnit(day, unit);
  else failUnit(day, unit);
}

function failUnit(day: DayState, unit: number): void {
  const { positionFrom, positionTo, stage, slot } = day.line.failures;
  day.unitDown[unit] = 1;
  day.stops[stage[unit]!]!++;
  for (let position = positionFrom[unit]!; position < positionTo[unit]!; position++) beginStoppage(day, position);
  day.calendar.schedule(slot[unit]!, day.now + day.repair[unit]!.draw());
}

/** A unit on running time starts counting with the first position that works again. */
function repairUnit(day: DayState, unit: number): void {
  const { positionFrom, positionTo, slot, onRunningTime } = day.line.failures;
  day.unitDown[unit] = 0;
  day.uptimeLeft[unit] = day.uptime[unit]!.draw();
  day.calendar.schedule(slot[unit]!, onRunningTime[unit] ? Infinity : day.now + day.uptimeLeft[unit]!);
  for (let position = positionFrom[unit]!; position < positionTo[unit]!; position++) endStoppage(day, position);
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
  if (day.stoppages[position]!++ > 0) return;
  const stage = day.line.positions.stage[position]!;
  if (day.state[position] === WORKING) {
    stopRun(day, position, NONE);
    day.calendar.schedule(day.line.slots.ofPosition[position]!, Infinity);
  } else if (day.item[position] === NONE) day.idle[stage]!--;
  setState(day, position, DOWN);
}

function endStoppage(day: DayState, position: number): void {
  if (--day.stoppages[position]! > 0) return;
  const stage = day.line.positions.stage[position]!;
  if (day.item[position] === NONE) {
    day.idle[stage]!++;
    setState(day, position, STARVED);
    startWaiting(day, stage);
  } else if (day.announces[position] === MOVE_ON) setState(day, position, BLOCKED);
  else startRun(day, position);
}
