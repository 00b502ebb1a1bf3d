import { DWELL, NO_LIMIT, waysOn } from "../line/index.ts";
import { type OwnTime, STATES } from "./dayRecord.ts";
import { noMoreHeads } from "./leaveLine.ts";
import { keepLeftSums, sumsAt } from "./ownTime.ts";
import { visitPresent } from "./present.ts";
import { BLOCKED, type DayState, STARVED, WORKING } from "./state/dayState.ts";
import type { StageState } from "./state/stageState.ts";

/** By stage: its own time, once the books are closed; null for a stage that no head could reach. */
export function ownTimes(day: DayState): (OwnTime | null)[] {
  const reachable = stillReachable(day);
  return day.stageAt.map((stage) => ownTime(day, stage, reachable.has(stage.index)));
}

function ownTime(day: DayState, stage: StageState, isReachable: boolean): OwnTime | null {
  const { from, left, isOver } = stage.own;
  if (Number.isNaN(from)) return null;
  const goesOn = !isOver && (isReachable || Number.isNaN(left));
  const to = goesOn ? day.now : left;
  // The last head may have left before the warm-up was over.
  if (to < from) return null;
  const stateSeconds = stage.kind === DWELL ? dwellSeconds(stage, to - from) : secondsUntil(stage, goesOn, day.now);
  return { fromSeconds: from, toSeconds: to, stateSeconds };
}

/** What is nothing but rounding is nothing. */
function secondsUntil(stage: StageState, goesOn: boolean, now: number): number[] {
  const { own } = stage;
  const sums = goesOn ? new Float64Array(STATES.length) : own.leftSums;
  if (goesOn) sumsAt(now, stage, sums);
  else keepLeftSums(stage);
  return Array.from(sums, (seconds, state) => {
    const since = seconds - own.fromSums[state]!;
    return since < 1e-6 ? 0 : since;
  });
}

/** A dwell stage is empty before its first head and after its last one, so all it holds lies within its own time. */
function dwellSeconds({ positions, places }: StageState, seconds: number): number[] {
  const sums = Array.from(positions[0]!.stateSeconds);
  if (places !== NO_LIMIT) sums[STARVED] = Math.max(0, places * seconds - sums[WORKING]! - sums[BLOCKED]!);
  return sums;
}

/** Stages that a head or a crate in the plant, or one that is still to come, could reach. */
function stillReachable(day: DayState): Set<number> {
  const { hanging } = day;
  const ways = waysOn(day.line);
  const reached = new Set<number>();
  if (!noMoreHeads(day)) reached.add(hanging.index);
  visitPresent(day, (item, stage, travelling) => {
    const isInHand = stage.positions.some((position) => position.item === item);
    // Crates that hanging will not take any more, and heads of a stream that stay before it.
    if (stage.own.isOver || (day.hangingClosed && stage === hanging && !travelling && !isInHand)) return;
    for (const to of travelling ? ways[stage.index]! : [stage.index]) reached.add(to);
  });
  for (const stage of reached) for (const to of ways[stage]!) reached.add(to);
  return reached;
}
