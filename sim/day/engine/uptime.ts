import type { BreakdownState } from "./state/breakdownState.ts";
import type { DayState } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";
import type { StageState } from "./state/stageState.ts";

/** The breakdown of this position's own that strikes first if it works on, or null. */
export function firstOwnBreakdown({ ownBreakdowns }: PositionState): BreakdownState | null {
  let first: BreakdownState | null = null;
  for (let row = 0; row < ownBreakdowns.length; row++) {
    if (first === null || ownBreakdowns[row]!.uptimeLeft < first.uptimeLeft) first = ownBreakdowns[row]!;
  }
  return first;
}

/** Takes the time worked since `runStart` off the position's own uptimes; the breakdown that strikes now has none left. */
export function spendOwnUptime({ now }: DayState, position: PositionState, striking: BreakdownState | null): void {
  const { ownBreakdowns, runStart } = position;
  const worked = now - runStart;
  for (let row = 0; row < ownBreakdowns.length; row++) {
    const breakdown = ownBreakdowns[row]!;
    breakdown.uptimeLeft = breakdown === striking ? 0 : Math.max(0, breakdown.uptimeLeft - worked);
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
export function startClocks(day: DayState, { clocks }: StageState): void {
  for (const breakdown of clocks) {
    if (++breakdown.runningStages !== breakdown.runningLeast) continue;
    breakdown.runStart = day.now;
    day.calendar.schedule(breakdown.slot, day.now + breakdown.uptimeLeft);
  }
}

/** The stage runs no longer. */
export function stopClocks(day: DayState, { clocks }: StageState): void {
  for (const breakdown of clocks) {
    if (breakdown.runningStages-- !== breakdown.runningLeast || breakdown.isDown) continue;
    breakdown.uptimeLeft = Math.max(0, breakdown.uptimeLeft - (day.now - breakdown.runStart));
    day.calendar.schedule(breakdown.slot, Infinity);
  }
}
