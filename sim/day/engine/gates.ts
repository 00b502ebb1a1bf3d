import type { DayState } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";

/** A head begins the stretch of every gate that stands before the stage. */
export function enterGates(day: DayState, { gates }: StageState, item: Item): void {
  for (let row = 0; row < gates.length; row++) {
    const gate = gates[row]!;
    // Back at the start of a stretch that it never left: it is counted there already.
    if (item.inside & (1 << gate)) continue;
    change(day, gate, 1);
    item.inside |= 1 << gate;
  }
}

/** The head is through; whoever is held back at the gate looks again when the event is over. */
export function leaveGate(day: DayState, gate: number, item: Item): void {
  if ((item.inside & (1 << gate)) === 0) return;
  change(day, gate, -1);
  item.inside &= ~(1 << gate);
  day.gateOpened[gate] = 1;
  day.mustSettle = true;
}

/** A head that leaves the line leaves every stretch it was on. */
export function leaveAllGates(day: DayState, item: Item): void {
  if (item.inside === 0) return;
  for (let gate = 0; gate < day.gates.count; gate++) leaveGate(day, gate, item);
}

function change(day: DayState, gate: number, by: number): void {
  const between = day.headsInGate[gate]!;
  between.set(between.heads + by, day.now);
}

/** True when a gate is full, a planned stop is due, a head would wait after its stunning, or a vessel that the stage feeds is full. */
export function isHeld(day: DayState, stage: StageState): boolean {
  const { gates } = stage;
  if (stage.isHeldForStunned && day.stunned!.isClosed) return true;
  for (let row = 0; row < gates.length; row++) if (isClosed(day, gates[row]!)) return true;
  return vesselIsFull(stage);
}

function isClosed(day: DayState, gate: number): boolean {
  if (day.headsInGate[gate]!.heads >= day.gates.atMost[gate]!) return true;
  return gate === day.gates.safeStop && (day.heldRows.length > 0 || day.unmanned > 0);
}

/** True when a vessel that stops the stage is full. */
export function vesselIsFull({ vessels }: StageState): boolean {
  for (let row = 0; row < vessels.length; row++) if (vessels[row]!.isFull) return true;
  return false;
}
