import type { DayState } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";

/** The positions that a failure unit stops. */
export function unitPositions({ failures, positionAt }: DayState, unit: number): readonly PositionState[] {
  return positionAt.slice(failures.positionFrom[unit]!, failures.positionTo[unit]!);
}
