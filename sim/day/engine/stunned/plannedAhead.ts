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
  return nextRow(
    day,
    (row) => day.line.calendar.action[row] === STAGE_PAUSE && day.line.calendar.target[row] === stage,
  );
}

/** When people of the crew next leave for a break or because their shift ends; Infinity when they stay. */
export function crewLeaves(day: DayState, crew: CrewState): number {
  const { action, target, amount } = day.line.calendar;
  return nextRow(day, (row) => {
    if (target[row] !== crew.index) return false;
    return action[row] === CREW_BREAK || (action[row] === CREW_PEOPLE && amount[row]! < crew.people);
  });
}

function nextRow(day: DayState, isMeant: (row: number) => boolean): number {
  const { calendar } = day.line;
  const waits = day.stunned!.isOnProtectedStretch;
  for (let row = day.calendarRow; row < calendar.count; row++) {
    if (isMeant(row) && !(waits && stopsProtected(day, row))) return calendar.seconds[row]!;
  }
  return Infinity;
}

/** Somebody who may work at the stage will be there at that time. */
export function peopleStay(day: DayState, stage: StageState, seconds: number): boolean {
  if (stage.people === 0) return true;
  return stage.crews.some((crew) => peopleHere(crew) - crew.owing >= stage.people && seconds < crewLeaves(day, crew));
}
