import { CHAIN, CREW_BREAK, CREW_PEOPLE, FLEET_BACK, HANGING_ENDS, STAGE_PAUSE } from "../line/index.ts";
import { bookCrew } from "./accounting.ts";
import { admitLoads } from "./arrivals.ts";
import { interruptChain, resumeChain } from "./chainRing.ts";
import type { DayState } from "./dayState.ts";
import { dispatchCrew, explainIdle, startWaiting } from "./flow.ts";
import { checkFinished } from "./leaveLine.ts";
import { addReturn, takeReturn } from "./returns.ts";

/** The calendar's next entry: shifts, breaks, pauses, the end of hanging. */
export function turnCalendar(day: DayState): void {
  const row = day.calendarRow++;
  scheduleCalendar(day);
  if (!stopsProtected(day, row)) {
    applyRow(day, row);
    return;
  }
  day.stopsDue++;
  if (day.gateHeads[day.line.gates.safeStop]! > 0) day.heldRows.push(row);
  else applyRow(day, row);
}

/** The protected stretch is empty: the planned stops that waited for it begin, for their full length. */
export function applyHeldRows(day: DayState): void {
  for (const row of day.heldRows.splice(0)) applyRow(day, row);
}

export function scheduleCalendar(day: DayState): void {
  const { calendar, slots } = day.line;
  const next = day.calendarRow < calendar.count ? calendar.seconds[day.calendarRow]! : Infinity;
  day.calendar.schedule(slots.calendar, next);
}

/** A crew, a machine or the fleet's crates are back. */
export function turnReturn(day: DayState): void {
  const { action, target, amount } = takeReturn(day);
  if (action === FLEET_BACK) {
    day.fleetFree += amount;
    admitLoads(day);
    return;
  }
  const isProtected = action === CREW_BREAK ? day.line.crews.protected[target] : day.line.stages.protected[target];
  if (isProtected) endStop(day);
  if (action === CREW_BREAK) changeCrew(day, target, () => day.breaks[target]!--);
  else changePause(day, target, -1);
}

/** A break, a pause or the end of a shift that takes somebody off the stretch which no stop may catch a head in. */
function stopsProtected(day: DayState, row: number): boolean {
  const { calendar, crews, stages } = day.line;
  const target = calendar.target[row]!;
  if (calendar.action[row] === CREW_BREAK) return crews.protected[target] === 1;
  if (calendar.action[row] === STAGE_PAUSE) return stages.protected[target] === 1;
  if (calendar.action[row] !== CREW_PEOPLE || !crews.protected[target]) return false;
  return calendar.amount[row] === 0 && day.people[target]! > 0;
}

function applyRow(day: DayState, row: number): void {
  const { calendar } = day.line;
  const target = calendar.target[row]!;
  const action = calendar.action[row]!;
  if (action === HANGING_ENDS) {
    endHanging(day);
    return;
  }
  if (action === CREW_PEOPLE) {
    const amount = calendar.amount[row]!;
    if (amount > 0 && day.line.crews.protected[target] && day.people[target] === 0 && day.now > 0) endStop(day);
    changeCrew(day, target, () => {
      day.people[target] = amount - day.absent[target]![amount]!;
    });
    return;
  }
  addReturn(day, { seconds: day.now + calendar.lengthSeconds[row]!, action, target, amount: 0 });
  if (action === CREW_BREAK) changeCrew(day, target, () => day.breaks[target]!++);
  else changePause(day, target, 1);
}

/** One planned stop less on the protected stretch; with the last one its first stage may begin again. */
function endStop(day: DayState): void {
  const { gates } = day.line;
  if (day.stopsDue === 0) return;
  day.stopsDue--;
  day.gateOpened[gates.safeStop] = 1;
  day.opened = true;
}

/** Whoever holds a head finishes it first: only free people go at once. */
function changeCrew(day: DayState, crew: number, change: () => void): void {
  bookCrew(day, crew);
  change();
  dispatchCrew(day, crew);
  const { stationFrom, stations } = day.line.crews;
  for (let row = stationFrom[crew]!; row < stationFrom[crew + 1]!; row++) startWaiting(day, stations[row]!);
}

function changePause(day: DayState, stage: number, change: number): void {
  day.pauses[stage]! += change;
  if (day.line.stages.kind[stage] !== CHAIN) {
    startWaiting(day, stage);
    return;
  }
  const chain = day.line.stages.chain[stage]!;
  day.chainPauses[chain]! += change;
  if (change > 0) interruptChain(day, chain);
  else resumeChain(day, chain);
}

function endHanging(day: DayState): void {
  day.hangingClosed = true;
  explainIdle(day, day.line.stages.hanging);
  checkFinished(day);
}
