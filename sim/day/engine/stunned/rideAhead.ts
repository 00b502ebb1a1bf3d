import { headAt } from "../chainRing.ts";
import type { ChainState } from "../state/chainState.ts";
import type { DayState } from "../state/dayState.ts";
import type { Leg, StunnedState } from "../state/stunnedState.ts";
import type { Ahead } from "./ahead.ts";
import { standsBefore } from "./chainForecast.ts";
import { nextStepSeconds } from "./chainSteps.ts";
import { HangingTimes } from "./hangingTimes.ts";

type Ride = Extract<Leg, { kind: "ride" }>;

/** Heads are hung and ride, or ride on from the stunner's own window, as long as the chain moves. */
export function rideAhead(day: DayState, care: StunnedState, { comes, longestWait }: Ahead, ride: Ride): Ahead {
  const { chain, from } = ride;
  const nextStep = nextStepSeconds(day, care, chain);
  if (nextStep === Infinity) return { comes, longestWait: Infinity };
  const under = onTheWay(chain, ride, nextStep);
  let wait = longestWait;
  let arrivals: number[];
  if (from === null) {
    if (chain.stage.waiters.first !== null) return { comes, longestWait: Infinity };
    const hanging = new HangingTimes(day, care, chain);
    arrivals = comes.map((there) => {
      const hung = hanging.take(there);
      wait = Math.max(wait, hung - there);
      return endOfRide(chain, ride, hanging.stepAfter(hung), 0);
    });
    if (!hanging.suffices(comes.length)) return { comes, longestWait: Infinity };
  } else arrivals = [ridesOn(chain, ride, nextStep, comes.at(-1)!)];
  const last = arrivals.at(-1)!;
  return { comes: [...under, ...arrivals], longestWait: Math.max(wait, standsBefore(day, care, chain, last)) };
}

/** When a head that is at the place now, `step` being the next step, comes to the end of its ride. */
function endOfRide({ places, secondsPerShackle }: ChainState, { to }: Ride, step: number, place: number): number {
  // Taken off when the step after its coming to the last place is due.
  const steps = to === null ? places - place : to.windowFrom - place;
  return steps <= 0 ? step - secondsPerShackle : step + (steps - 1) * secondsPerShackle;
}

/** Heads that hang between the ends of the ride, the one furthest on first. */
function onTheWay(chain: ChainState, ride: Ride, nextStep: number): number[] {
  const first = ride.from === null ? 0 : ride.from.windowTo;
  const end = ride.to === null ? chain.places : ride.to.windowFrom;
  const comes: number[] = [];
  for (let place = end - 1; place >= first; place--) {
    if (headAt(chain, place) !== null) comes.push(endOfRide(chain, ride, nextStep, place));
  }
  return comes;
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
