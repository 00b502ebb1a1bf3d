import { headAt } from "../chainRing.ts";
import { vesselIsFull } from "../gates.ts";
import type { ChainState } from "../state/chainState.ts";
import type { DayState } from "../state/dayState.ts";
import { type Item, UNFINISHED } from "../state/item.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { isUnfinishedAt, nextStepSeconds, stepsUntil } from "./chainSteps.ts";
import { freePlaces } from "./freePlaces.ts";
import { pauseBegins, peopleStay } from "./plannedAhead.ts";
import { secondsLeft } from "./secondsLeft.ts";

/*
 * What is known of a chain's next steps. A head that hangs on it, or is to be hung on it, must not be caught by its standing.
 */

const ROUNDING = 1e-9;

/**
 * Seconds for which the chain is bound to stand before `until`, by what is known now; 0 when it runs through, Infinity when
 * nobody can say how long. A place behind it counts only if it is free now, so that nothing that breaks further down can
 * catch a stunned head.
 */
export function standsBefore(day: DayState, care: StunnedState, chain: ChainState, until: number): number {
  const nextStep = nextStepSeconds(day, care, chain);
  if (nextStep === Infinity || pauseBegins(day, chain.stage.index) <= until) return Infinity;
  const steps = Math.min(chain.places, stepsUntil(chain, nextStep, until));
  if (steps === 0) return 0;
  if (vesselIsFull(chain.stage) || !hasRoomFor(day, care, chain, steps)) return Infinity;
  const { stations } = chain;
  let longest = 0;
  for (let rank = 0; rank < stations.length; rank++) {
    const station = stations[rank]!;
    if (!station.stopsChain || station === care.from) continue;
    longest = Math.max(longest, windowStands(day, care, chain, station, nextStep, steps));
  }
  return longest;
}

/** The heads that come to the end of the chain in so many steps all find a place. */
function hasRoomFor(day: DayState, care: StunnedState, chain: ChainState, steps: number): boolean {
  const { stage, unfinishedTo } = chain;
  let usual = 0;
  let aside = 0;
  for (let step = 1; step <= steps; step++) {
    const item = headAt(chain, chain.places - step);
    if (item === null) continue;
    usual++;
    if (mayStayUnfinished(chain, item)) aside++;
  }
  if (stage.next >= 0 && usual > freePlaces(day, care, day.stageAt[stage.next]!, stage)) return false;
  return unfinishedTo < 0 || aside <= freePlaces(day, care, day.stageAt[unfinishedTo]!, stage);
}

function mayStayUnfinished(chain: ChainState, item: Item): boolean {
  if ((item.flags & UNFINISHED) !== 0) return true;
  const { lastStation } = chain;
  return lastStation !== null && !lastStation.stopsChain && item.doneAt !== lastStation.index;
}

/** Seconds by which the mean work at the station is late for the heads that come to the end of its window. */
function windowStands(
  day: DayState,
  care: StunnedState,
  chain: ChainState,
  station: StageState,
  nextStep: number,
  steps: number,
): number {
  let longest = 0;
  for (let step = 1; step <= Math.min(steps, station.windowTo); step++) {
    const place = station.windowTo - step;
    if (!isUnfinishedAt(chain, station, place)) continue;
    const due = nextStep + (step - 1) * chain.secondsPerShackle;
    const ahead = station.windowFrom - place;
    const comes = ahead > 0 ? nextStep + (ahead - 1) * chain.secondsPerShackle : day.now;
    longest = Math.max(longest, expectedEnd(day, care, station, headAt(chain, place)!, comes) - due);
  }
  return longest > ROUNDING ? longest : 0;
}

/** When the station has probably finished the head; Infinity when nobody works there, or will by then. */
function expectedEnd(day: DayState, care: StunnedState, station: StageState, item: Item, comes: number): number {
  const { positions } = station;
  let earliest = Infinity;
  for (let rank = 0; rank < positions.length; rank++) {
    const position = positions[rank]!;
    const end = position.item === null ? day.now : day.now + secondsLeft(day, care, position);
    if (position.item === item) return position.downCauses > 0 ? Infinity : end;
    if (position.downCauses === 0) earliest = Math.min(earliest, end);
  }
  const begins = Math.max(earliest, comes);
  return peopleStay(day, station, begins) ? begins + care.meanSeconds[station.index]! : Infinity;
}
