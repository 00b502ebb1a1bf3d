import { type CrewState, peopleHere } from "../state/crewState.ts";
import type { StageState } from "../state/stageState.ts";

/** At work elsewhere; absent today; fewer in this shift than the stage's positions take. */
export const ELSEWHERE = 0;
export const ABSENT = 1;
export const FEW = 2;

/**
 * Why a head had to wait for people at `stage`, told at the moment at which it starts because some came free at `from`.
 * Whoever is absent comes first: with them the head would not have waited, wherever the others were at work.
 */
export function lackOf(stage: StageState, from: number): number {
  const { crews, people } = stage;
  if (crews.some((crew) => isAbsence(crew, people))) return ABSENT;
  if (from !== stage.index) return ELSEWHERE;
  return crews.some((crew) => freeNow(crew) + busyElsewhere(crew, stage) >= people) ? ELSEWHERE : FEW;
}

function isAbsence(crew: CrewState, people: number): boolean {
  if (crew.away + crew.owing > 0 || crew.missing === 0) return false;
  return freeNow(crew) + crew.missing >= people;
}

function freeNow(crew: CrewState): number {
  return Math.max(0, peopleHere(crew) - crew.busy);
}

/** People of the crew with work in hand at other stages, repairs and emptyings. */
function busyElsewhere(crew: CrewState, { positions, people }: StageState): number {
  let here = 0;
  for (const position of positions)
    if (position.crew === crew && position.item !== null && !position.done) here += people;
  return crew.busy - here;
}
