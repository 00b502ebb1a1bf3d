import { headAt } from "../chainRing.ts";
import type { ChainState } from "../state/chainState.ts";
import type { DayState } from "../state/dayState.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";

const ROUNDING = 1e-9;

/** When the chain makes its next step if nothing holds it; Infinity while it stands. */
export function nextStepSeconds(day: DayState, care: StunnedState, chain: ChainState): number {
  if (chain.downCauses > 0 || chain.pauses > 0) return Infinity;
  if (!chain.isDue) return day.calendar.times[chain.slot]!;
  return standsForStunning(chain, care.from) ? day.now + care.meanSeconds[care.from.index]! : Infinity;
}

/** Its step is due, and it stands for the head at the end of the stunner's own window, and for nothing else. */
function standsForStunning(chain: ChainState, from: StageState): boolean {
  if (from.chain !== chain || !from.stopsChain || !isUnfinishedAt(chain, from, from.windowTo - 1)) return false;
  if (chain.wayOut.item !== null) return false;
  const { stations } = chain;
  for (let rank = 0; rank < stations.length; rank++) {
    const station = stations[rank]!;
    if (station !== from && station.stopsChain && isUnfinishedAt(chain, station, station.windowTo - 1)) return false;
  }
  return true;
}

/** A head hangs there that the station has not finished. */
export function isUnfinishedAt(chain: ChainState, { index }: StageState, place: number): boolean {
  const item = headAt(chain, place);
  return item !== null && item.doneAt !== index;
}

/** Steps that it makes up to that time. */
export function stepsUntil({ secondsPerShackle }: ChainState, nextStep: number, until: number): number {
  return until < nextStep ? 0 : Math.floor((until - nextStep) / secondsPerShackle + ROUNDING) + 1;
}
