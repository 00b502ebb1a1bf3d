import { CHAIN, CHAIN_STATION, DWELL } from "../../line/index.ts";
import { isHeld } from "../gates.ts";
import { type DayState, DOWN } from "../state/dayState.ts";
import type { Fifo } from "../state/fifo.ts";
import type { PositionState } from "../state/positionState.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { standsBefore } from "./chainForecast.ts";
import { freePlaces } from "./freePlaces.ts";
import { bookHands, countHands } from "./hands.ts";
import { HangingTimes } from "./hangingTimes.ts";
import { pauseBegins } from "./plannedAhead.ts";
import { rideAhead } from "./rideAhead.ts";
import { secondsLeft } from "./secondsLeft.ts";
import { Ahead, Times } from "./times.ts";

/*
 * Whether a head that is stunned now would wait before its sticking: a run ahead, by mean times, of the heads between the
 * two and of the next one, from what is known at this instant. What comes up later (a breakdown, work that takes longer
 * than usual) cannot be in it.
 *
 * It is asked at every event while a head waits to be stunned. So what costs little and often says no is asked first, and
 * all times go into lists that are there already.
 */

const ROUNDING = 1e-6;

const ahead = new Ahead();
/** When each position of the stage looked at is free, ascending; and when the work under way there ends. */
const free = new Times();
const ends = new Times();
const hangingTimes = new HangingTimes();

/** 0 when the next head may be stunned now; else seconds after which that is to be asked again, Infinity: nobody can say. */
export function secondsUntilClear(day: DayState, care: StunnedState): number {
  const { from, way } = care;
  if (holdsFinished(from)) return Infinity;
  ahead.begin();
  addEndsInHand(day, care, from, ahead.comes);
  ahead.comes.push(day.now + care.meanSeconds[from.index]!);
  let before = from;
  let longest = 0;
  for (let rank = 0; rank < way.length; rank++) {
    const leg = way[rank]!;
    if (before.kind !== CHAIN_STATION) travelAhead(care, ahead, before);
    const wait = leg.kind === "ride" ? rideAhead(day, care, ahead, leg) : stageAhead(day, care, leg.stage);
    if (wait === Infinity) return Infinity;
    longest = Math.max(longest, wait);
    before = leg.kind === "ride" ? leg.chain.stage : leg.stage;
  }
  return longest > ROUNDING ? longest : 0;
}

function holdsFinished({ positions }: StageState): boolean {
  for (let rank = 0; rank < positions.length; rank++) if (positions[rank]!.done) return true;
  return false;
}

/** When the heads in hand are probably done; those at a machine that is down are not reckoned with. */
function addEndsInHand(day: DayState, care: StunnedState, { positions }: StageState, times: Times): void {
  for (let rank = 0; rank < positions.length; rank++) {
    const position = positions[rank]!;
    if (position.item === null || position.done || position.state === DOWN) continue;
    times.insert(day.now + secondsLeft(day, care, position));
  }
}

/** Heads on their way come when they come, those behind them after the mean of the way. */
function travelAhead({ travelSeconds }: StunnedState, { comes, next }: Ahead, before: StageState): void {
  const { travelling, index } = before;
  addReady(travelling, next);
  for (let rank = 0; rank < comes.count; rank++) next.push(comes.at(rank) + travelSeconds[index]!);
  ahead.turn();
}

function addReady({ first, length }: Fifo, times: Times): void {
  let item = first;
  for (let rank = 0; rank < length; rank++) {
    times.push(item!.ready);
    item = item!.next;
  }
}

function stageAhead(day: DayState, care: StunnedState, stage: StageState): number {
  return stage.kind === DWELL ? dwellAhead(day, care, stage) : workAhead(day, care, stage);
}

/** Heads dwell between stunning and sticking: each needs a place that is free now. */
function dwellAhead(day: DayState, care: StunnedState, stage: StageState): number {
  const { comes, next } = ahead;
  if (stage.positions[0]!.item !== null || comes.count > freePlaces(day, care, stage, care.from)) return Infinity;
  addReady(stage.queue, next);
  for (let rank = 0; rank < comes.count; rank++) next.push(comes.at(rank) + care.meanSeconds[stage.index]!);
  ahead.turn();
  return 0;
}

/** Heads are worked on, first come first served; nothing may stand in their way behind the stage either. */
function workAhead(day: DayState, care: StunnedState, stage: StageState): number {
  const isLast = stage === care.to;
  const behind = isLast ? care.after : null;
  const heads = inHand(stage) + ahead.comes.count;
  if (stage.queue.length > 0 || stage.pauses > 0 || (!isLast && holdsFinished(stage))) return Infinity;
  if (behind !== null && behind.kind !== CHAIN && heads > freePlaces(day, care, behind, stage)) return Infinity;
  if (isHeld(day, stage) || !hasGateFor(day, stage, ahead.comes.count) || !hasVesselFor(day, stage, heads)) {
    return Infinity;
  }
  const hanging = behind?.kind === CHAIN ? hangingTimes.begin(day, care, behind.chain!) : null;
  if (!isLast) addEndsInHand(day, care, stage, ahead.next);
  const wait = serve(day, care, stage, hanging);
  if (wait === Infinity) return Infinity;
  ahead.turn();
  const last = ahead.comes.at(ahead.comes.count - 1);
  const lastBegins = last - care.meanSeconds[stage.index]!;
  if (pauseBegins(day, stage.index) <= lastBegins) return Infinity;
  if (hanging !== null && !hanging.suffices(heads)) return Infinity;
  return Math.max(wait, chainStands(day, care, stage, hanging, lastBegins));
}

function inHand({ positions }: StageState): number {
  let heads = 0;
  for (let rank = 0; rank < positions.length; rank++) if (positions[rank]!.item !== null) heads++;
  return heads;
}

/** How long the chain that the stage stands on, or hands heads to, will stand before the last head is through. */
function chainStands(
  day: DayState,
  care: StunnedState,
  stage: StageState,
  hanging: HangingTimes | null,
  lastBegins: number,
): number {
  const stands = stage.kind === CHAIN_STATION ? standsBefore(day, care, stage.chain!, lastBegins) : 0;
  return hanging === null ? stands : Math.max(stands, standsBefore(day, care, hanging.chain, hanging.last));
}

/** Adds when the heads are done to those at the next point, and tells the longest that one of them waits for its turn. */
function serve(day: DayState, care: StunnedState, stage: StageState, hanging: HangingTimes | null): number {
  const { comes, next } = ahead;
  const mean = care.meanSeconds[stage.index]!;
  findFree(day, care, stage, hanging);
  if (free.count === 0) return Infinity;
  if (stage.people > 0) countHands(day, care, stage);
  let longest = 0;
  for (let rank = 0; rank < comes.count; rank++) {
    const ready = Math.max(comes.at(rank), free.at(0));
    const begins = stage.people > 0 && ready < Infinity ? bookHands(stage, ready, mean) : ready;
    if (begins === Infinity) return Infinity;
    longest = Math.max(longest, begins - comes.at(rank));
    free.replaceFirst(1, hanging === null ? begins + mean : hanging.take(begins + mean));
    next.push(begins + mean);
  }
  return longest;
}

/** When each position that is not down is free; a finished head keeps its position until it is hung. */
function findFree(day: DayState, care: StunnedState, { positions }: StageState, hanging: HangingTimes | null): void {
  free.clear();
  ends.clear();
  for (let rank = 0; rank < positions.length; rank++) {
    const position = positions[rank]!;
    if (position.downCauses > 0) continue;
    if (position.item === null) free.push(day.now);
    else ends.insert(endOf(day, care, position));
  }
  for (let rank = 0; rank < ends.count; rank++) free.insert(hanging?.take(ends.at(rank)) ?? ends.at(rank));
}

function endOf(day: DayState, care: StunnedState, position: PositionState): number {
  return day.now + (position.done ? 0 : secondsLeft(day, care, position));
}

/** The gates before the stage let so many heads more in. */
function hasGateFor(day: DayState, { gates }: StageState, heads: number): boolean {
  for (let row = 0; row < gates.length; row++) {
    const gate = gates[row]!;
    if (day.headsInGate[gate]!.heads + heads > day.gates.atMost[gate]!) return false;
  }
  return true;
}

/** The vessels that stop the stage when they are full are not full before the last of so many heads, of mean weight, is begun. */
function hasVesselFor(day: DayState, stage: StageState, heads: number): boolean {
  const { productVessel, productShare } = day.stages;
  for (let row = stage.productFrom; row < stage.productTo; row++) {
    const vessel = day.vesselAt[productVessel[row]!];
    if (!vessel?.stopsFeeders) continue;
    const perHead = productShare[row]! * meanLiveKg(day);
    if (vessel.kg + (heads - 1) * perHead >= vessel.capacityKg) return false;
  }
  return true;
}

function meanLiveKg({ liveKg, hung }: DayState): number {
  return hung > 0 ? liveKg / hung : 0;
}
