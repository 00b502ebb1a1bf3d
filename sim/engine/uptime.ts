import type { DayState } from "./dayState.ts";

/** The unit of this position that fails first if it works on, or -1. */
export function firstOwnFailure(day: DayState, position: number): number {
  const { ownFailureFrom } = day.positions;
  let first = -1;
  for (let unit = ownFailureFrom[position]!; unit < ownFailureFrom[position + 1]!; unit++) {
    if (first < 0 || day.uptimeLeft[unit]! < day.uptimeLeft[first]!) first = unit;
  }
  return first;
}

/** Takes the time worked since `runStart` off the position's own uptimes; the unit that fails now has none left. */
export function spendOwnUptime(day: DayState, position: number, failing: number): void {
  const { ownFailureFrom } = day.positions;
  const worked = day.now - day.runStart[position]!;
  for (let unit = ownFailureFrom[position]!; unit < ownFailureFrom[position + 1]!; unit++) {
    day.uptimeLeft[unit] = unit === failing ? 0 : Math.max(0, day.uptimeLeft[unit]! - worked);
  }
}

/** A position of the stage began to work: clocks of the whole station run from the first one on. */
export function startStationClocks(day: DayState, stage: number): void {
  if (day.workingPositions[stage]!++ > 0) return;
  const { stationClock, stationClockFrom, slot } = day.failures;
  for (let row = stationClockFrom[stage]!; row < stationClockFrom[stage + 1]!; row++) {
    const unit = stationClock[row]!;
    day.unitRunStart[unit] = day.now;
    day.calendar.schedule(slot[unit]!, day.now + day.uptimeLeft[unit]!);
  }
}

/** A position of the stage stopped working: with the last one the clocks of the station stand. */
export function stopStationClocks(day: DayState, stage: number): void {
  if (--day.workingPositions[stage]! > 0) return;
  const { stationClock, stationClockFrom, slot } = day.failures;
  for (let row = stationClockFrom[stage]!; row < stationClockFrom[stage + 1]!; row++) {
    const unit = stationClock[row]!;
    if (day.unitDown[unit]) continue;
    day.uptimeLeft[unit] = Math.max(0, day.uptimeLeft[unit]! - (day.now - day.unitRunStart[unit]!));
    day.calendar.schedule(slot[unit]!, Infinity);
  }
}
