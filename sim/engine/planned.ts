import { CREW_BREAK, CREW_PEOPLE, HANGING_ENDS } from "../line/index.ts";
import { bookCrew } from "./accounting.ts";
import type { DayState } from "./dayState.ts";
import { dispatchCrew, explainIdle, startWaiting } from "./flow.ts";
import { checkFinished } from "./leaveLine.ts";

/** The calendar's next entry: shifts, breaks, pauses, the end of hanging. */
export function turnCalendar(day: DayState): void {
  const { calendar } = day.line;
  const row = day.calendarRow++;
  scheduleCalendar(day);
  const target = calendar.target[row]!;
  const amount = calendar.amount[row]!;
  if (calendar.action[row] === CREW_PEOPLE || calendar.action[row] === CREW_BREAK) {
    changeCrew(day, target, calendar.action[row] === CREW_BREAK, amount);
  } else if (calendar.action[row] === HANGING_ENDS) endHanging(day);
  else {
    day.pauses[target]! += amount;
    startWaiting(day, target);
  }
}

export function scheduleCalendar(day: DayState): void {
  const { calendar, slots } = day.line;
  const next = day.calendarRow < calendar.count ? calendar.seconds[day.calendarRow]! : Infinity;
  day.calendar.schedule(slots.calendar, next);
}

/** Whoever holds a head finishes it first: only free people go at once. */
function changeCrew(day: DayState, crew: number, isBreak: boolean, amount: number): void {
  bookCrew(day, crew);
  if (isBreak) day.breaks[crew]! += amount;
  else day.people[crew] = amount;
  dispatchCrew(day, crew);
  const { stationFrom, stations } = day.line.crews;
  for (let row = stationFrom[crew]!; row < stationFrom[crew + 1]!; row++) explainIdle(day, stations[row]!);
}

function endHanging(day: DayState): void {
  day.hangingClosed = true;
  explainIdle(day, day.line.stages.hanging);
  checkFinished(day);
}
