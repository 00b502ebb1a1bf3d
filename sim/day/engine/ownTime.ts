import { STATES } from "./dayRecord.ts";
import { type DayState, ON_BREAK, WORKING } from "./state/dayState.ts";
import type { StageState } from "./state/stageState.ts";

/*
 * A stage's own time: from when the first head (crate) came to it to when the last one left it, or to the end of the time
 * watched while one in the plant could still come. A stage beside the line, to which heads come only when they are sent
 * aside, is there for them as long as the stages that send them: from the first head that left one of those. What brings
 * crates to the hanging point ends with hanging.
 *
 * Within it, hours in which nobody may work there by plan (breaks, pauses, hours without its crews) count as "on break"
 * whatever the positions were left in; only work that is finished into a break stays work.
 *
 * Here: what is noted on the way. What is made of it at the day's end: ownTimeRecord.ts.
 */

const WIDTH = STATES.length;

/** A head or a crate is there: the stage's own time begins with the first one. */
export function beginOwnTime(day: DayState, stage: StageState): void {
  const { own } = stage;
  if (own.hasBegun) return;
  own.hasBegun = true;
  own.from = day.now;
  sumsAt(day.now, stage, own.fromSums);
}

/** A head or a crate leaves the stage. */
export function noteLeft(day: DayState, { own, beside }: StageState): void {
  if (own.isOver) return;
  own.left = day.now;
  if (beside.length > 0) noteBeside(day, beside);
}

function noteBeside(day: DayState, beside: readonly StageState[]): void {
  for (const stage of beside) {
    beginOwnTime(day, stage);
    stage.own.left = day.now;
  }
}

/** The stage's own time ends now, whatever it still holds. */
export function endOwnTime(day: DayState, stage: StageState): void {
  const { own } = stage;
  if (own.isOver) return;
  own.left = day.now;
  keepLeftSums(stage);
  own.isOver = true;
}

/** Keeps what the sums were when the last head left, before a position of the stage changes from idle to idle. */
export function keepLeftSums(stage: StageState): void {
  const { own } = stage;
  if (own.leftSumsAt === own.left || Number.isNaN(own.left)) return;
  own.leftSumsAt = own.left;
  sumsAt(own.left, stage, own.leftSums);
}

/** From now on nobody may work at the stage by plan, or somebody may again. */
export function noteAway(day: DayState, stage: StageState, isAway: boolean): void {
  const { own } = stage;
  if (isAway === own.isAway) return;
  keepLeftSums(stage);
  if (isAway) rawSumsAt(day.now, stage, own.awaySums);
  else endAbsence(day.now, stage);
  own.isAway = isAway;
}

const scratch = new Float64Array(WIDTH);

function endAbsence(now: number, stage: StageState): void {
  const { away, awaySums } = stage.own;
  rawSumsAt(now, stage, scratch);
  for (let state = 0; state < WIDTH; state++) away[state]! += scratch[state]! - awaySums[state]!;
}

/** Position-seconds of a stage by state up to `at`, since which none of its positions has changed. */
function rawSumsAt(at: number, { positions }: StageState, sums: Float64Array): void {
  sums.fill(0);
  for (const { stateSeconds, state, stateSince } of positions) {
    for (let each = 0; each < WIDTH; each++) sums[each]! += stateSeconds[each]!;
    sums[state]! += at - stateSince;
  }
}

/** The same with planned absences as time on break. */
export function sumsAt(at: number, stage: StageState, sums: Float64Array): void {
  const { away, awaySums, isAway } = stage.own;
  rawSumsAt(at, stage, sums);
  for (let state = 0; state < WIDTH; state++) {
    if (state === WORKING || state === ON_BREAK) continue;
    const absent = away[state]! + (isAway ? sums[state]! - awaySums[state]! : 0);
    sums[state]! -= absent;
    sums[ON_BREAK]! += absent;
  }
}

/** The warm-up is over: own times that have begun begin anew. */
export function forgetOwnTime(day: DayState, { own }: StageState): void {
  if (!Number.isNaN(own.from)) own.from = day.now;
  own.fromSums.fill(0);
  own.leftSums.fill(0);
  own.leftSumsAt = Number.NaN;
  own.away.fill(0);
  own.awaySums.fill(0);
}
