import type { DayState } from "./dayState.ts";

/** A head begins the stretch of every gate that stands before the stage. */
export function enterGates(day: DayState, stage: number, item: number): void {
  const { gateFrom, gate } = day.stages;
  for (let row = gateFrom[stage]!; row < gateFrom[stage + 1]!; row++) {
    // Back at the start of a stretch that it never left: it is counted there already.
    if (day.pool.inside[item]! & (1 << gate[row]!)) continue;
    bookGate(day, gate[row]!);
    const heads = ++day.gateHeads[gate[row]!]!;
    if (heads > day.gateMax[gate[row]!]!) day.gateMax[gate[row]!] = heads;
    day.pool.inside[item]! |= 1 << gate[row]!;
  }
}

/** The head is through; whoever is held back at the gate looks again when the event is over. */
export function leaveGate(day: DayState, gate: number, item: number): void {
  if ((day.pool.inside[item]! & (1 << gate)) === 0) return;
  bookGate(day, gate);
  day.pool.inside[item]! &= ~(1 << gate);
  day.gateHeads[gate]!--;
  day.gateOpened[gate] = 1;
  day.opened = true;
}

/** A head that leaves the line leaves every stretch it was on. */
export function leaveAllGates(day: DayState, item: number): void {
  if (day.pool.inside[item] === 0) return;
  for (let gate = 0; gate < day.gates.count; gate++) leaveGate(day, gate, item);
}

export function bookGate(day: DayState, gate: number): void {
  day.gateArea[gate]! += day.gateHeads[gate]! * (day.now - day.gateSince[gate]!);
  day.gateSince[gate] = day.now;
}

/** True when a gate is full, a planned stop is due, or a vessel that the stage feeds is full. */
export function isHeld(day: DayState, stage: number): boolean {
  const { gateFrom, gate } = day.stages;
  const { atMost, safeStop } = day.gates;
  for (let row = gateFrom[stage]!; row < gateFrom[stage + 1]!; row++) {
    if (day.gateHeads[gate[row]!]! >= atMost[gate[row]!]!) return true;
    if (gate[row] === safeStop && (day.heldRows.length > 0 || day.unmanned > 0)) return true;
  }
  return vesselIsFull(day, stage);
}

/** True when a vessel that stops the stage is full. */
export function vesselIsFull(day: DayState, stage: number): boolean {
  const { vesselFrom, vessel } = day.stages;
  for (let row = vesselFrom[stage]!; row < vesselFrom[stage + 1]!; row++) {
    if (!Number.isNaN(day.vesselFullSince[vessel[row]!]!)) return true;
  }
  return false;
}
