import { CHAIN, DWELL } from "../../line/index.ts";
import { headAt } from "../chainRing.ts";
import type { KillStopReason } from "../dayRecord.ts";
import { vesselIsFull } from "../gates.ts";
import { noMoreHeads, notHung } from "../leaveLine.ts";
import type { BreakdownState } from "../state/breakdownState.ts";
import type { ChainState } from "../state/chainState.ts";
import {
  BLOCKED,
  type DayState,
  DOWN,
  NO_CREW,
  ON_BREAK,
  STANDS_DOWN,
  STANDS_PAUSE,
  STANDS_UNFINISHED,
  STARVED,
  WORKING,
} from "../state/dayState.ts";
import type { PositionState } from "../state/positionState.ts";
import type { StageState } from "../state/stageState.ts";

/**
 * Whether a step of the kill line stands now, and why. What a step only has from another step of the kill line (no place
 * there, a gate between them) is no reason of its own: that other step works, or stands itself.
 *
 * Asked at the end of an instant of every day whose stops are recorded, so what works is told first and at no cost.
 */
export function mayStand(stage: StageState): boolean {
  if (stage.kind === CHAIN || stage.kind === DWELL) return !isMoving(stage);
  if (stage.workingPositions > 0) return false;
  const { positions, vessels } = stage;
  for (let rank = 0; rank < positions.length; rank++) {
    const { state, item } = positions[rank]!;
    // Idle for want of heads, or held back by a gate: no reason of its own.
    if (state !== STARVED && (state !== BLOCKED || item !== null || vessels.length > 0)) return true;
  }
  return false;
}

function isMoving(stage: StageState): boolean {
  if (stage.kind === CHAIN) return stage.positions[0]!.state === WORKING;
  if (stage.kind === DWELL) return stage.positions[0]!.item === null;
  return stage.workingPositions > 0;
}

/** Why a step that may stand does so of itself; null when it does not. `steps`: all of the kill line. */
export function whyStanding(day: DayState, stage: StageState, steps: readonly StageState[]): KillStopReason | null {
  if (stage.kind === CHAIN) return chainCause(day, stage.chain!, steps);
  if (stage.kind === DWELL) return dwellCause(day, stage, steps);
  return stationCause(day, stage, steps);
}

/**
 * A head has come to the kill line, and one is on it or before it, or may still be hung: outside of that time nothing
 * stands, for there is nothing to be done.
 */
export function isExpecting(day: DayState, first: StageState, last: number): boolean {
  if (!first.own.hasBegun) return false;
  if (!noMoreHeads(day)) return true;
  for (let stage = day.hanging.index; stage <= last; stage++) {
    const { occupancy, isHanging } = day.stageAt[stage]!;
    if (occupancy > (isHanging ? notHung(day) : 0)) return true;
  }
  return false;
}

function stationCause(day: DayState, stage: StageState, steps: readonly StageState[]): KillStopReason | null {
  // When hanging has ended its stage has only what is in hand to finish.
  const isClosed = stage.isHanging && day.hangingClosed;
  const positions = isClosed ? stage.positions.filter(({ item }) => item !== null) : stage.positions;
  if (positions.length === 0) return null;
  if (isOnlyBlocked(positions) && stage.vessels.length === 0) return behind(day, stage, steps);
  const where = nameOf(day, stage);
  if (has(positions, ON_BREAK)) return { cause: "planned break", where, what: absenceWords(stage) };
  if (has(positions, NO_CREW)) return isShared(stage, steps) ? null : { cause: "nobody there", where, what: "" };
  if (vesselIsFull(stage) && has(positions, BLOCKED)) return { cause: "full vessel", where, what: vesselOf(stage) };
  if (positions.every(({ state }) => state === DOWN))
    return { cause: "breakdown", where, what: breakdownOf(day, stage) };
  const held = positions.some(({ state, item }) => state === BLOCKED && item !== null);
  return held ? behind(day, stage, steps) : null;
}

function has(positions: readonly PositionState[], state: number): boolean {
  for (let rank = 0; rank < positions.length; rank++) if (positions[rank]!.state === state) return true;
  return false;
}

/** The commonest case, told without anything made for it: finished heads wait for a place. */
function isOnlyBlocked(positions: readonly PositionState[]): boolean {
  for (let rank = 0; rank < positions.length; rank++) {
    if (positions[rank]!.state !== BLOCKED || positions[rank]!.item === null) return false;
  }
  return true;
}

function dwellCause(day: DayState, stage: StageState, steps: readonly StageState[]): KillStopReason | null {
  const { done } = stage.positions[0]!;
  if (done) return { cause: "full vessel", where: nameOf(day, stage), what: vesselOf(stage) };
  return behind(day, stage, steps);
}

/** A chain that does not move is a line that stands, whatever it stands for. */
function chainCause(day: DayState, chain: ChainState, steps: readonly StageState[]): KillStopReason {
  const where = nameOf(day, chain.stage);
  if (chain.stand === STANDS_DOWN) {
    const down = chain.stations.find(({ positions }) => positions.some(({ downCauses }) => downCauses > 0));
    const station = down ?? chain.stage;
    return { cause: "breakdown", where: nameOf(day, station), what: breakdownOf(day, station) };
  }
  if (chain.stand === STANDS_PAUSE) return { cause: "planned break", where, what: "pause of the chain" };
  if (chain.stand === STANDS_UNFINISHED) {
    return { cause: "chain stands", where, what: `a head is not finished at ${unfinishedAt(day, chain)}` };
  }
  if (vesselIsFull(chain.stage)) return { cause: "full vessel", where, what: vesselOf(chain.stage) };
  return behind(day, chain.stage, steps) ?? withoutPlace(day, chain.stage, steps);
}

/** The stage behind the chain works, and has no place for the head at its end all the same. */
function withoutPlace(day: DayState, { index, next }: StageState, steps: readonly StageState[]): KillStopReason {
  const after = day.stageAt[next];
  if (after === undefined || steps.includes(after))
    return { cause: "chain stands", where: day.stages.names[index]!, what: NO_PLACE };
  return { cause: "full behind", where: nameOf(day, after), what: NO_PLACE };
}

const NO_PLACE = "no free place";

function unfinishedAt(day: DayState, chain: ChainState): string {
  const holds = ({ index, windowTo, stopsChain }: StageState) => {
    const head = headAt(chain, windowTo - 1);
    return stopsChain && head !== null && head.doneAt !== index;
  };
  return chain.stations
    .filter(holds)
    .map((station) => nameOf(day, station))
    .join(", ");
}

/** People of the step are at work at another step of the kill line: they are there, and the line runs at their pace. */
function isShared(stage: StageState, steps: readonly StageState[]): boolean {
  for (let step = 0; step < steps.length; step++) {
    const { positions } = steps[step]!;
    for (let rank = 0; rank < positions.length; rank++) {
      const { crew, state } = positions[rank]!;
      if (state === WORKING && crew !== null && stage.crews.includes(crew)) return true;
    }
  }
  return false;
}

/** The step cannot pass heads on: told where the kill line ends, as what holds up the stages behind it. */
function behind(day: DayState, stage: StageState, steps: readonly StageState[]): KillStopReason | null {
  let next = stage.next;
  if (next < 0 || steps.includes(day.stageAt[next]!)) return null;
  for (let seen = 0; seen < day.stageAt.length && next >= 0; seen++) {
    const found = day.stageAt[next]!;
    const why = holdsUp(day, found);
    if (why === "moves") return null;
    if (why !== "next") return { cause: "full behind", where: nameOf(day, found), what: why };
    next = found.next;
  }
  return null;
}

/** What keeps a stage behind the kill line from taking heads; "moves": nothing but its pace; "next": the one after it. */
function holdsUp(day: DayState, stage: StageState): string {
  if (stage.kind === DWELL) {
    const { item, done } = stage.positions[0]!;
    if (item === null) return NO_PLACE;
    return done ? vesselOf(stage) : "next";
  }
  if (isMoving(stage)) return "moves";
  if (stage.kind === CHAIN) return "chain stands";
  const states = stage.positions.map(({ state }) => state);
  if (states.includes(ON_BREAK)) return "planned break";
  if (states.includes(NO_CREW)) return "nobody there";
  if (vesselIsFull(stage)) return vesselOf(stage);
  if (states.every((state) => state === DOWN)) return breakdownOf(day, stage);
  return states.includes(BLOCKED) ? "next" : "moves";
}

function absenceWords({ pauses, crews }: StageState): string {
  if (pauses > 0) return "pause of the machine";
  return crews.every(({ people }) => people === 0) ? "between shifts" : "";
}

/** Names of what is broken there now; "" where the stage only stands with others. */
function breakdownOf(day: DayState, stage: StageState): string {
  const isHere = ({ isDown, isShared, stages }: BreakdownState) => isDown && !isShared && stages[0] === stage;
  return [...new Set(day.breakdownAt.filter(isHere).map(({ name }) => name))].join(", ");
}

function vesselOf({ vessels }: StageState): string {
  const full = vessels.filter(({ isFull }) => isFull);
  return full.map(({ name }) => name).join(", ");
}

function nameOf(day: DayState, { index }: StageState): string {
  return day.stages.names[index]!;
}
