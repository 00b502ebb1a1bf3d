import type { PositionState } from "./positionState.ts";

/** Positions that are blocked for a place in one stage, in the order in which they blocked. */
export class Waiters {
  first: PositionState | null = null;
  private last: PositionState | null = null;

  push(position: PositionState): void {
    position.nextWaiter = null;
    if (this.first === null) this.first = position;
    else this.last!.nextWaiter = position;
    this.last = position;
  }

  /** Takes the first position; there must be one. */
  shift(): PositionState {
    const position = this.first!;
    this.first = position.nextWaiter;
    return position;
  }
}
