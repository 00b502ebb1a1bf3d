import type { DayUnderWay } from "./state/dayUnderWay.ts";
import type { PositionState } from "./state/positionState.ts";

/** The positions that a failure unit stops. */
export function unitPositions({ failures, positionAt }: DayUnderWay, unit: number): readonly PositionState[] {
  return positionAt.slice(failures.positionFrom[unit]!, failures.positionTo[unit]!);
}
