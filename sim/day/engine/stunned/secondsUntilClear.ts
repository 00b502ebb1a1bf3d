import { CHAIN, CHAIN_STATION, DWELL } from "../../line/index.ts";
import { isHeld } from "../gates.ts";
import { visitList } from "../present.ts";
import { type DayState, DOWN } from "../state/dayState.ts";
import type { PositionState } from "../state/positionState.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import type { Ahead } from "./ahead.ts";
import { standsBefore } from "./chainForecast.ts";
import { freePlaces } from "./freePlaces.ts";
import { bookHands, handsFor } from "./hands.ts";
import { HangingTimes } from "./hangingTimes.ts";
import { pauseBegins } from "./plannedAhead.ts";
import { rideAhead } from "./rideAhead.ts";
import { secondsLeft } from "./secondsLeft.ts";

/*
 * Whether a head that is stunned now would wait before its sticking: a run ahead, by mean times, of the heads between the
 * two and of the next one, from what is known at this instant. What comes up later (a breakdown, work that takes longer
 * than usual) cannot be in it.
 */
const NEVER: Ahead = { comes: [], longestWait: Infinity };

const ROUNDING = 1e-6;

/** 0 when the next head may be stunned now; else seconds after which that is to be asked again, Infinity: nobody can say. */
export function secondsUntilClear(day: DayState, care: StunnedState): number {
  const { from, way } = care;
  if (from.positions.some(({ done }) => done)) return Infinity;
  const stunned = day.now + care.meanSeconds[from.index]!;
  let ahead: Ahead = { comes: [...endsInHand(day, care, from), stunned], longestWait: 0 };
  let before = from;
  for (const leg of way) {
    if (leg.kind === "ride") {
      ahead = rideAhead(day, care, afterTravel(care, ahead, before), leg);
      before = leg.chain.stage;
    } else {
      const there = afterTravel(care, ahead, before);
      ahead =
        leg.stage.kind === DWELL ? dwellAhead(day, care, there, leg.stage) : workAhead(day, care, there, leg.stage);
      before = leg.stage;
    }
    if (ahead.longestWait === Infinity) return Infinity;
  }
  return ahead.longestWait > ROUNDING ? ahead.longestWait : 0;
}

/** When the heads in hand are probably done; those at a machine that is down are not reckoned with. */
function endsInHand(day: DayState, care: StunnedState, stage: StageState): number[] {
  const busy = stage.positions.filter(({ item, done, state }) => item !== null && !done && state !== DOWN);
  return busy.map((position) => day.now + secondsLeft(day, care, position)).sort((a, b) => a - b);
}

/** Heads on their way come when they come, those behind them after the mean of the way. */
function afterTravel(care: StunnedState, { comes, longestWait }: Ahead, before: StageState): Ahead {
  if (before.kind === CHAIN_STATION) return { comes, longestWait };
  const under: number[] = [];
  visitList(before.travelling, (item) => under.push(item.ready));
  const travel = care.travelSeconds[before.index]!;
  return { comes: [...under, ...comes.map((seconds) => seconds + travel)], longestWait };
}

/** Heads dwell between stunning and sticking: each needs a place that is free now. */
function dwellAhead(day: DayState, care: StunnedState, { comes, longestWait }: Ahead, stage: StageState): Ahead {
  const [wayOut] = stage.positions;
  if (wayOut!.item !== null || comes.length > freePlaces(day, care, stage, care.from)) return NEVER;
  const inside: number[] = [];
  visitList(stage.queue, (item) => inside.push(item.ready));
  const mean = care.meanSeconds[stage.index]!;
  return { comes: [...inside, ...comes.map((seconds) => seconds + mean)], longestWait };
}

/** Heads are worked on, first come first served; nothing may stand in their way behind the stage either. */
function workAhead(day: DayState, care: StunnedState, ahead: Ahead, stage: StageState): Ahead {
  const inHand = stage.positions.filter(({ item }) => item !== null).length;
  const isLast = stage === care.to;
  if (stage.queue.length > 0 || stage.pauses > 0 || isHeld(day, stage)) return NEVER;
  if (!hasGateFor(day, stage, ahead.comes.length) || !hasVesselFor(day, stage, inHand + ahead.comes.length))
    return NEVER;
  if (!isLast && stage.positions.some(({ done }) => done)) return NEVER;
  const behind = isLast ? care.after : null;
  if (behind !== null && behind.kind !== CHAIN) {
    if (inHand + ahead.comes.length > freePlaces(day, care, behind, stage)) return NEVER;
  }
  const hanging = behind?.kind === CHAIN ? new HangingTimes(day, care, behind.chain!) : null;
  const worked = serve(day, care, ahead, stage, hanging);
  const last = worked.comes.at(-1)!;
  if (last === Infinity || pauseBegins(day, stage.index) <= last - care.meanSeconds[stage.index]!) return NEVER;
  if (hanging !== null && !hanging.suffices(inHand + ahead.comes.length)) return NEVER;
  const stands = chainStands(day, care, stage, hanging, last);
  return {
    comes: isLast ? worked.comes : [...endsInHand(day, care, stage), ...worked.comes],
    longestWait: Math.max(worked.longestWait, stands),
  };
}

/** How long the chain that the stage stands on, or hands heads to, will stand before the last head is through. */
function chainStands(
  day: DayState,
  care: StunnedState,
  stage: StageState,
  hanging: HangingTimes | null,
  until: number,
): number {
  const under = stage.kind === CHAIN_STATION ? stage.chain! : null;
  const stands = under === null ? 0 : standsBefore(day, care, under, until - care.meanSeconds[stage.index]!);
  return hanging === null ? stands : Math.max(stands, standsBefore(day, care, hanging.chain, hanging.last));
}

function serve(
  day: DayState,
  care: StunnedState,
  ahead: Ahead,
  stage: StageState,
  hanging: HangingTimes | null,
): Ahead {
  const mean = care.meanSeconds[stage.index]!;
  const free = positionsFree(day, care, stage, hanging);
  const hands = stage.people > 0 ? handsFor(day, care, stage) : null;
  let { longestWait } = ahead;
  const comes = ahead.comes.map((there) => {
    free.sort((a, b) => a - b);
    const ready = Math.max(there, free[0] ?? Infinity);
    const begins = hands === null || ready === Infinity ? ready : bookHands(hands, stage.people, ready, mean);
    longestWait = Math.max(longestWait, begins - there);
    free[0] = hanging === null ? begins + mean : hanging.take(begins + mean);
    return begins + mean;
  });
  return { comes, longestWait };
}

/** When each position that is not down is free; a finished head keeps its position until it is hung. */
function positionsFree(day: DayState, care: StunnedState, stage: StageState, hanging: HangingTimes | null): number[] {
  const upright = stage.positions.filter(({ stoppages }) => stoppages === 0);
  const idle = upright.filter(({ item }) => item === null).map(() => day.now);
  const busy = upright.filter(({ item }) => item !== null);
  const ends = busy.map((position) => endOf(day, care, position)).sort((a, b) => a - b);
  return [...idle, ...ends.map((end) => hanging?.take(end) ?? end)];
}

function endOf(day: DayState, care: StunnedState, position: PositionState): number {
  return day.now + (position.done ? 0 : secondsLeft(day, care, position));
}

/** The gates before the stage let so many heads more in. */
function hasGateFor(day: DayState, { gates }: StageState, heads: number): boolean {
  return gates.every((gate) => day.between[gate]!.heads + heads <= day.gates.atMost[gate]!);
}

/** The vessels that stop the stage when they are full are not full before the last of so many heads, of mean weight, is begun. */
function hasVesselFor(day: DayState, stage: StageState, heads: number): boolean {
  const { productVessel, productShare } = day.stages;
  for (let row = stage.productFrom; row < stage.productTo; row++) {
    const vessel = productVessel[row]!;
    if (vessel < 0 || !day.vessels.stops[vessel]) continue;
    const perHead = productShare[row]! * meanLiveKg(day);
    if (day.vesselKg[vessel]! + (heads - 1) * perHead >= day.vessels.capacityKg[vessel]!) return false;
  }
  return true;
}

function meanLiveKg({ liveKg, hung }: DayState): number {
  return hung > 0 ? liveKg / hung : 0;
}
