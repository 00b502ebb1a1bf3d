import { headAt } from "../chainRing.ts";
import type { ChainState } from "../state/chainState.ts";
import type { DayState } from "../state/dayState.ts";
import type { Leg, StunnedState } from "../state/stunnedState.ts";
import { standsBefore } from "./chainForecast.ts";
import { nextStepSeconds } from "./chainSteps.ts";
import { HangingTimes } from "./hangingTimes.ts";
import type { Ahead, Times } from "./times.ts";

type Ride = Extract<Leg, { kind: "ride" }>;

const hanging = new HangingTimes();

/**
 * Heads are hung and ride, or ride on from the stunner's own window, as long as the chain moves. Tells the longest that one
 * of them waits.
 */
export function rideAhead(day: DayState, care: StunnedState, ahead: Ahead, ride: Ride): number {
  const { chain, from } = ride;
  const { comes, next } = ahead;
  const nextStep = nextStepSeconds(day, care, chain);
  if (nextStep === Infinity) return Infinity;
  addOnTheWay(chain, ride, nextStep, next);
  let wait = 0;
  if (from !== null) next.push(ridesOn(chain, ride, nextStep, comes.at(comes.count - 1)));
  else wait = hangAll(day, care, ahead, ride);
  if (wait === Infinity) return Infinity;
  ahead.turn();
  return Math.max(wait, standsBefore(day, care, chain, ahead.comes.at(ahead.comes.count - 1)));
}

function hangAll(day: DayState, care: StunnedState, { comes, next }: Ahead, ride: Ride): number {
  const { chain } = ride;
  if (chain.stage.waiters.first !== null) return Infinity;
  hanging.begin(day, care, chain);
  let wait = 0;
  for (let rank = 0; rank < comes.count; rank++) {
    const hung = hanging.take(comes.at(rank));
    wait = Math.max(wait, hung - comes.at(rank));
    next.push(endOfRide(chain, ride, hanging.stepAfter(hung), 0));
  }
  return hanging.suffices(comes.count) ? wait : Infinity;
}

/** When a head that is at the place now, `step` being the next step, comes to the end of its ride. */
function endOfRide({ places, secondsPerShackle }: ChainState, { to }: Ride, step: number, place: number): number {
  // Taken off when the step after its coming to the last place is due.
  const steps = to === null ? places - place : to.windowFrom - place;
  return steps <= 0 ? step - secondsPerShackle : step + (steps - 1) * secondsPerShackle;
}

/** Heads that hang between the ends of the ride, the one furthest on first. */
function addOnTheWay(chain: ChainState, ride: Ride, nextStep: number, times: Times): void {
  const first = ride.from === null ? 0 : ride.from.windowTo;
  const end = ride.to === null ? chain.places : ride.to.windowFrom;
  for (let place = end - 1; place >= first; place--) {
    if (headAt(chain, place) !== null) times.push(endOfRide(chain, ride, nextStep, place));
  }
}

/** The next head to be stunned hangs in the stunner's window: it is stunned there by `stunned`, and rides on. */
function ridesOn(chain: ChainState, ride: Ride, nextStep: number, stunned: number): number {
  const from = ride.from!;
  const next = from.queue.first;
  let place = from.windowTo - 1;
  while (place > from.windowFrom && headAt(chain, place) !== next) place--;
  const leavesWindow = nextStep + (from.windowTo - 1 - place) * chain.secondsPerShackle;
  const late = from.stopsChain ? Math.max(0, stunned - leavesWindow) : 0;
  return endOfRide(chain, ride, nextStep, place) + late;
}
