import { CHAIN } from "../line/index.ts";
import type { ChainState } from "./state/chainState.ts";
import type { DayUnderWay } from "./state/dayUnderWay.ts";
import type { PositionState } from "./state/positionState.ts";
import { rowsOf } from "./state/rowsOf.ts";
import type { StageState } from "./state/stageState.ts";

/** The positions that a failure unit stops; a chain that it stops has none. */
export function unitPositions(day: DayUnderWay, unit: number): readonly PositionState[] {
  const { failures, positionAt } = day;
  if (unit < failures.sharedFrom) return positionAt.slice(failures.positionFrom[unit]!, failures.positionTo[unit]!);
  return unitStages(day, unit).flatMap((stage) => (stage.kind === CHAIN ? [] : stage.positions));
}

/** The stages that a failure unit stops, wholly or one position of them. */
export function unitStages({ failures, stageAt }: DayUnderWay, unit: number): StageState[] {
  if (unit < failures.sharedFrom) return [stageAt[failures.stage[unit]!]!];
  return Array.from(rowsOf(failures.stops, failures.stopsFrom, unit - failures.sharedFrom), (stage) => stageAt[stage]!);
}

/** The chains that a shared unit stops by themselves, not for a station on them. */
export function unitChains(day: DayUnderWay, unit: number): ChainState[] {
  if (unit < day.failures.sharedFrom) return [];
  return unitStages(day, unit).flatMap((stage) => (stage.kind === CHAIN ? [stage.chain!] : []));
}
