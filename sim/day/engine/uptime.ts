import type { DayState } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";
import type { StageState } from "./state/stageState.ts";

/** The unit of this position that fails first if it works on, or -1. */
export function firstOwnFailure(day: DayState, { ownFailureFrom, ownFailureTo }: PositionState): number {
  let first = -1;
  for (let unit = ownFailureFrom; unit < ownFailureTo; unit++) {
    if (first < 0 || day.uptimeLeft[unit]! < day.uptimeLeft[first]!) first = unit;
  }
  return first;
}

/** Takes the time worked since `runStart` off the position's own uptimes; the unit that fails now has none left. */
export function spendOwnUptime(day: DayState, position: PositionState, failing: number): void {
  const { ownFailureFrom, ownFailureTo, runStart } = position;
  const worked = day.now - runStart;
  for (let unit = ownFailureFrom; unit < ownFailureTo; unit++) {
    day.uptimeLeft[unit] = unit === failing ? 0 : Math.max(0, day.uptimeLeft[unit]! - worked);
  }
}

/** A position of the stage began to work: clocks of the whole station, and shared ones, run from the first one on. */
export function startStationClocks(day: DayState, stage: StageState): void {
  if (stage.workingPositions++ > 0 || stage.clocks.length === 0) return;
  startClocks(day, stage);
}

/** A position of the stage stopped working: with the last one the clocks of the station stand. */
export function stopStationClocks(day: DayState, stage: StageState): void {
  if (--stage.workingPositions > 0 || stage.clocks.length === 0) return;
  stopClocks(day, stage);
}

/** The stage runs: clocks begin with it that now have as many running stages as they need. */
export function startClocks(day: DayState, stage: StageState): void {
  const { slot, runningLeast } = day.failures;
  for (const unit of stage.clocks) {
    if (++day.unitRunning[unit]! !== runningLeast[unit]) continue;
    day.unitRunStart[unit] = day.now;
    day.calendar.schedule(slot[unit]!, day.now + day.uptimeLeft[unit]!);
  }
}

/** The stage runs no longer. */
export function stopClocks(day: DayState, stage: StageState): void {
  const { slot, runningLeast } = day.failures;
  for (const unit of stage.clocks) {
    if (day.unitRunning[unit]!-- !== runningLeast[unit] || day.unitDown[unit]) continue;
    day.uptimeLeft[unit] = Math.max(0, day.uptimeLeft[unit]! - (day.now - day.unitRunStart[unit]!));
    day.calendar.schedule(slot[unit]!, Infinity);
  }
}
