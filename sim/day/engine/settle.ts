import { tryMoveChain } from "./chainMoves.ts";
import { startWaiting } from "./flow.ts";
import { applyHeldRows } from "./planned.ts";
import type { DayState } from "./state/dayState.ts";

/**
 * After an event: stages behind gates that opened look again, planned stops that waited for an empty stretch begin, and
 * chains whose hindrance is gone move, until nothing opens any more. All at the same instant.
 */
export function settle(day: DayState): void {
  const { gates } = day.line;
  while (day.opened) {
    day.opened = false;
    for (let gate = 0; gate < gates.count; gate++) {
      if (!day.gateOpened[gate]) continue;
      day.gateOpened[gate] = 0;
      if (gate === gates.safeStop && day.between[gate]!.heads === 0 && day.heldRows.length > 0) applyHeldRows(day);
      startWaiting(day, day.stageAt[gates.from[gate]!]!);
    }
    for (const chain of day.chainAt) {
      if (!chain.looksAgain) continue;
      chain.looksAgain = false;
      tryMoveChain(day, chain);
    }
  }
}
