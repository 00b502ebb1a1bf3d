import { CHAIN, CHAIN_STATION, DWELL, NO_LIMIT } from "../../line/index.ts";
import { headAt } from "../chainRing.ts";
import { type DayState, WORKING } from "../state/dayState.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { nextStepSeconds } from "./chainSteps.ts";

/**
 * Places of the stage that are free now for heads from `by`: none while others stand in line for one, and less those that
 * heads in hand elsewhere may take. A chain that runs takes a head a step: it has as many as its shackles.
 */
export function freePlaces(day: DayState, care: StunnedState, stage: StageState, by: StageState): number {
  if (stage.waiters.first !== null) return 0;
  if (stage.kind === CHAIN) {
    const { chain } = stage;
    return nextStepSeconds(day, care, chain!) === Infinity ? 0 : chain!.freeShackles;
  }
  if (stage.places === NO_LIMIT) return Infinity;
  return unreserved(stage) - inHandElsewhere(care, stage, by);
}

/** Hooks fill one after another; one that is begun has places left. */
function unreserved({ places, headsPerHook, occupancy, headsEntered, headsLeft }: StageState): number {
  if (headsPerHook === 1) return places - occupancy;
  const hooks =
    Math.floor(places / headsPerHook) - Math.floor(headsEntered / headsPerHook) + Math.floor(headsLeft / headsPerHook);
  return Math.max(0, hooks * headsPerHook - (headsEntered % headsPerHook));
}

function inHandElsewhere(care: StunnedState, target: StageState, by: StageState): number {
  const feeders = care.feeders[target.index]!;
  let heads = 0;
  for (let row = 0; row < feeders.length; row++) {
    const feeder = feeders[row]!;
    if (feeder === by) continue;
    if (feeder.kind === DWELL) heads += feeder.queue.length;
    else if (feeder.kind === CHAIN) heads += headAt(feeder.chain!, feeder.chain!.places - 1) === null ? 0 : 1;
    else if (feeder.kind !== CHAIN_STATION) heads += working(feeder);
  }
  return heads;
}

function working({ positions }: StageState): number {
  let heads = 0;
  for (let rank = 0; rank < positions.length; rank++) if (positions[rank]!.state === WORKING) heads++;
  return heads;
}
