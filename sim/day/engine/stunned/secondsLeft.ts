import { type DayState, WORKING } from "../state/dayState.ts";
import type { PositionState } from "../state/positionState.ts";
import type { StunnedState } from "../state/stunnedState.ts";

/** Mean work less what is done of it: what somebody who knows the station would expect; 0 when the work is over or late. */
export function secondsLeft(day: DayState, care: StunnedState, position: PositionState): number {
  if (position.state !== WORKING) return 0;
  return Math.max(0, care.meanSeconds[position.stage.index]! - (day.now - position.runStart));
}
