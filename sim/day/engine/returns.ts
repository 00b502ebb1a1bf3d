import { CREW_BREAK } from "../line/index.ts";
import type { DayState } from "./state/dayState.ts";
import type { Return } from "./state/dayUnderWay.ts";

/** Notes that something comes back at a known time; equal times in the order of noting. */
export function addReturn(day: DayState, back: Return): void {
  let at = day.returns.length;
  while (at > 0 && day.returns[at - 1]!.seconds > back.seconds) at--;
  day.returns.splice(at, 0, back);
  scheduleReturns(day);
}

/** Sets anew when people of the crew are back from their breaks; NaN: never. */
export function changeReturns(day: DayState, crew: number, change: (seconds: number) => number): void {
  const theirs = day.returns.filter(({ action, target }) => action === CREW_BREAK && target === crew);
  if (theirs.length === 0) return;
  for (const back of theirs) {
    back.seconds = change(back.seconds);
    day.returns.splice(day.returns.indexOf(back), 1);
    if (!Number.isNaN(back.seconds)) addReturn(day, back);
  }
  scheduleReturns(day);
}

export function takeReturn(day: DayState): Return {
  const back = day.returns.shift()!;
  scheduleReturns(day);
  return back;
}

function scheduleReturns(day: DayState): void {
  day.calendar.schedule(day.slots.returns, day.returns[0]?.seconds ?? Infinity);
}
