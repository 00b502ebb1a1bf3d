import type { CrewState } from "./state/crewState.ts";
import type { DayState } from "./state/dayState.ts";
import type { StageState } from "./state/stageState.ts";

/*
 * What happens at an instant only calls for people and notes who is free; dispatch.ts sends them when all of it is over.
 */

/**
 * A crewed station looks, when the instant is over, whether it gets people, and says why if it does not. `isReady`: an idle
 * position there could begin something if it had people; asked for with the binding path alone.
 */
export function callPeople(day: DayState, stage: StageState, isReady: boolean): void {
  const { crews } = stage;
  day.path?.calls(stage.index, isReady);
  noteCall(day, stage);
  for (let row = 0; row < crews.length; row++) crews[row]!.looks = true;
  day.unsent = true;
}

export function noteCall(day: DayState, stage: StageState): void {
  if (stage.isCalling) return;
  stage.isCalling = true;
  day.calling[day.callingCount++] = stage;
}

/** People of the crew are free, or there again: they look for work when the instant is over. */
export function callCrew(day: DayState, crew: CrewState): void {
  day.path?.frees(crew.index);
  crew.looks = true;
  day.unsent = true;
}
