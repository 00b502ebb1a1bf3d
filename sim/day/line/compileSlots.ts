import type { Plan } from "../../asked/plan/plan.ts";
import {
  type BreakdownColumns,
  CHAIN,
  type ChainColumns,
  DWELL,
  type PositionColumns,
  SLOT_BREAKDOWN,
  SLOT_CALENDAR,
  SLOT_CHAIN,
  SLOT_DWELL,
  SLOT_HELP,
  SLOT_HOLD,
  SLOT_LATE,
  SLOT_LOAD,
  SLOT_POSITION,
  SLOT_RETURN,
  SLOT_STREAM,
  SLOT_TRAVEL,
  SLOT_VESSEL,
  type SlotColumns,
  type StageColumns,
  type VesselColumns,
} from "./compiledLine.ts";

interface Parts {
  stages: StageColumns;
  positions: PositionColumns;
  breakdowns: BreakdownColumns;
  chains: ChainColumns;
  vessels: VesselColumns;
}

/**
 * Numbers the slots; the number is the rank among events at the same instant. Order: work, dwell and chains, last stage
 * first (a place that frees downstream is free for the head upstream), positions of a stage by number; then travel, last
 * stage first; then breakdowns and repairs with slots of their own; then vessels; then people coming back; then the
 * calendar; then arrivals; then the care for stunned heads. Writes the `slot` columns of `parts`.
 */
export function compileSlots(plan: Plan, parts: Parts): SlotColumns {
  const { stages, positions, breakdowns, chains, vessels } = parts;
  const kind: number[] = [];
  const owner: number[] = [];
  const add = (slotKind: number, slotOwner: number) => {
    kind.push(slotKind);
    owner.push(slotOwner);
    return kind.length - 1;
  };
  const ofPosition = new Int32Array(positions.count).fill(-1);
  const ofTravel = new Int32Array(stages.count).fill(-1);
  for (let stage = stages.count - 1; stage >= 0; stage--) {
    if (stages.kind[stage] === CHAIN) {
      chains.slot[stages.chain[stage]!] = add(SLOT_CHAIN, stages.chain[stage]!);
      continue;
    }
    const slotKind = stages.kind[stage] === DWELL ? SLOT_DWELL : SLOT_POSITION;
    for (let position = stages.positionFrom[stage]!; position < stages.positionFrom[stage + 1]!; position++) {
      ofPosition[position] = add(slotKind, position);
    }
  }
  for (let stage = stages.count - 1; stage >= 0; stage--) {
    if (stages.travel[stage] !== null) ofTravel[stage] = add(SLOT_TRAVEL, stage);
  }
  for (let unit = breakdowns.ownCount; unit < breakdowns.count; unit++)
    breakdowns.slot[unit] = add(SLOT_BREAKDOWN, unit);
  for (let vessel = 0; vessel < vessels.count; vessel++) vessels.slot[vessel] = add(SLOT_VESSEL, vessel);
  const returns = add(SLOT_RETURN, 0);
  const calendar = add(SLOT_CALENDAR, 0);
  const supply = add(plan.supply.kind === "loads" ? SLOT_LOAD : SLOT_STREAM, 0);
  const careFor = (slotKind: number) => (plan.stunned === null ? -1 : add(slotKind, 0));
  const [hold, late, help] = [careFor(SLOT_HOLD), careFor(SLOT_LATE), careFor(SLOT_HELP)];
  return {
    count: kind.length,
    kind: Int8Array.from(kind),
    owner: Int32Array.from(owner),
    ofPosition,
    ofTravel,
    returns,
    calendar,
    supply,
    hold,
    late,
    help,
  };
}
