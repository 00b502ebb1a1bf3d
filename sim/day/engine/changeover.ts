import { type DayState, NONE } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { PositionState } from "./state/positionState.ts";

/** Seconds that the position takes before the head, since it is the first one there of another lot than the one before. */
export function changeover(day: DayState, position: PositionState, { load }: Item): number {
  if (load === NONE) return 0;
  const { lot } = day.loadAt[load]!;
  const before = position.lot;
  position.lot = lot;
  if (before === null || before === lot) return 0;
  position.stage.changeovers++;
  return position.stage.changeoverSeconds;
}
