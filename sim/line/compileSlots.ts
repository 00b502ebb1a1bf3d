import type { Plan } from "../plan/plan.ts";
import {
  DWELL,
  type FailureColumns,
  type PositionColumns,
  SLOT_CALENDAR,
  SLOT_DWELL,
  SLOT_FAILURE,
  SLOT_LOAD,
  SLOT_POSITION,
  SLOT_STREAM,
  SLOT_TRAVEL,
  type SlotColumns,
  type StageColumns,
} from "./compiledLine.ts";

/**
 * Numbers the slots; the number is the rank among events at the same instant. Order: work and dwell, last stage first (a
 * place that frees downstream is free for the head upstream), positions of a stage by number; then travel, last stage
 * first; then failures and repairs with slots of their own; then the calendar; then arrivals. Writes `failures.slot`.
 */
export function compileSlots(
  plan: Plan,
  stages: StageColumns,
  positions: PositionColumns,
  failures: FailureColumns,
): SlotColumns {
  const kind: number[] = [];
  const owner: number[] = [];
  const add = (slotKind: number, slotOwner: number) => {
    kind.push(slotKind);
    owner.push(slotOwner);
    return kind.length - 1;
  };
  const ofPosition = new Int32Array(positions.count);
  const ofTravel = new Int32Array(stages.count).fill(-1);
  for (let stage = stages.count - 1; stage >= 0; stage--) {
    const slotKind = stages.kind[stage] === DWELL ? SLOT_DWELL : SLOT_POSITION;
    for (let position = stages.positionFrom[stage]!; position < stages.positionFrom[stage + 1]!; position++) {
      ofPosition[position] = add(slotKind, position);
    }
  }
  for (let stage = stages.count - 1; stage >= 0; stage--) {
    if (stages.travel[stage] !== null) ofTravel[stage] = add(SLOT_TRAVEL, stage);
  }
  for (let unit = failures.ownCount; unit < failures.count; unit++) failures.slot[unit] = add(SLOT_FAILURE, unit);
  const calendar = add(SLOT_CALENDAR, 0);
  const supply = add(plan.supply.kind === "loads" ? SLOT_LOAD : SLOT_STREAM, 0);
  return {
    count: kind.length,
    kind: Int8Array.from(kind),
    owner: Int32Array.from(owner),
    ofPosition,
    ofTravel,
    calendar,
    supply,
  };
}
