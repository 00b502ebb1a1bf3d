import type { BranchShares } from "../line/index.ts";
import { type DayState, NONE } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";

/** The removal or diversion that the draw falls on where a share depends on the head, or NONE. */
export function branchOfHead(day: DayState, { branchFrom, branchTo }: StageState, item: Item, u: number): number {
  const { branchShare, branchBy } = day.stages;
  let sum = 0;
  for (let row = branchFrom; row < branchTo; row++) {
    const by = branchBy[row]!;
    sum += by === null ? branchShare[row]! : shareAt(by, measureOf(day, by, item));
    if (u < sum) return row;
  }
  return NONE;
}

/** Kilograms, or seconds; NaN for a time that the head did not take, since it never passed one of its points. */
function measureOf({ limits, points }: DayState, { span }: BranchShares, item: Item): number {
  return span < 0 ? item.weight : item.stamps[limits.count + points.spans + span]!;
}

/** The share there; that of the first point below it and for NaN, that of the last one above it. */
export function shareAt({ at, share, steps }: BranchShares, measure: number): number {
  if (!(measure > at[0]!)) return share[0]!;
  let row = 0;
  while (row + 1 < at.length && at[row + 1]! <= measure) row++;
  if (steps || row + 1 === at.length) return share[row]!;
  const part = (measure - at[row]!) / (at[row + 1]! - at[row]!);
  return share[row]! + part * (share[row + 1]! - share[row]!);
}
