import { CREW_BREAK, CREW_PEOPLE, STAGE_PAUSE } from "../../line/index.ts";
import { stopsProtected } from "../planned.ts";
import type { CrewState } from "../state/crewState.ts";
import { peopleHere } from "../state/crewState.ts";
import type { DayState } from "../state/dayState.ts";
import type { StageState } from "../state/stageState.ts";

/*
 * What the calendar has in store. A stop that waits for the protected stretch to be empty catches nobody there.
 */

/** When the stage's next planned pause begins; Infinity when none does. */
export function pauseBegins(day: DayState, stage: number): number {
  const { action, target, seconds, count } = day.line.calendar;
  for (let row = day.calendarRow; row < count; row++) {
    if (action[row] === STAGE_PAUSE && target[row] === stage && catchesHeads(day, row)) return seconds[row]!;
  }
  return Infinity;
}

/** When people of the crew next leave for a break or because their shift ends; Infinity when they stay. */
export function crewLeaves(day: DayState, { index, people }: CrewState): number {
  const { action, target, amount, seconds, count } = day.line.calendar;
  for (let row = day.calendarRow; row < count; row++) {
    if (target[row] !== index) continue;
    const leaves = action[row] === CREW_BREAK || (action[row] === CREW_PEOPLE && amount[row]! < people);
    if (leaves && catchesHeads(day, row)) return seconds[row]!;
  }
  return Infinity;
}

function catchesHeads(day: DayState, row: number): boolean {
  return !(day.stunned!.isOnProtectedStretch && stopsProtected(day, row));
}

/** Somebody who may work at the stage will be there at that time. */
export function peopleStay(day: DayState, stage: StageState, seconds: number): boolean {
  if (stage.people === 0) return true;
  const { crews, people } = stage;
  for (let row = 0; row < crews.length; row++) {
    const crew = crews[row]!;
    if (peopleHere(crew) - crew.owing >= people && seconds < crewLeaves(day, crew)) return true;
  }
  return false;
}
